/**
 * Foreign files. Whatever comes from outside is opened only in a process of its own, which has little memory, no environment, and a
 * limit of time: a broken or hostile file can stop that process and nothing else.
 *
 * <p>Here stands what other bundles use, and the process's own end. The packages below are nobody else's; none of them uses this one,
 * and no two use each other.
 */
package reglet.reading;
