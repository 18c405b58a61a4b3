@echo off
rem Opens the window: reglet-workbench [JOB]
setlocal
set "java=javaw"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\javaw"
for %%j in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set "launcher=%%~fj"
rem room for what a start makes, and the second compiler waits until code is really hot
set "quick=-Xms384m -Xmn192m -XX:MetaspaceSize=128m -XX:Tier4InvocationThreshold=20000 -XX:Tier4MinInvocationThreshold=3000 -XX:Tier4CompileThreshold=40000 -XX:Tier4BackEdgeThreshold=120000"
start "" "%java%" -XX:+UseSerialGC -Xshare:auto %quick% -Dlog4j.provider=org.apache.logging.log4j.simple.internal.SimpleProvider -Dorg.apache.commons.logging.Log=org.apache.commons.logging.impl.NoOpLog %REGLET_JAVA_OPTS% -jar "%launcher%" -nosplash %*
