/**
 * Foreign files. Whatever comes from outside is opened only in a process of its own, which has little memory, no environment, and a
 * limit of time: a broken or hostile file can stop that process and nothing else.
 */
package reglet.reading;
