@echo off
rem Opens the window: reglet-workbench [JOB]
setlocal
set "java=javaw"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\javaw"
for %%j in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set "launcher=%%~fj"
rem room for what a start makes, and no second compiler, which would take a third of its processor time
set "quick=-XX:+UseParallelGC -Xms384m -Xmn192m -XX:MetaspaceSize=128m -XX:TieredStopAtLevel=1"
start "" "%java%" -Xshare:auto %quick% -Dlog4j.provider=org.apache.logging.log4j.simple.internal.SimpleProvider -Dorg.apache.commons.logging.Log=org.apache.commons.logging.impl.NoOpLog %REGLET_JAVA_OPTS% -jar "%launcher%" -nosplash %*
