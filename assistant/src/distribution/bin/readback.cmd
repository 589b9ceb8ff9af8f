@echo off
rem Starts Readback from any working folder. Needs a Java runtime 17 or newer: the one that came with it in runtime\,
rem else JAVA_HOME, else java on the PATH.
rem READBACK_OPTS adds options for the Java virtual machine.
setlocal
for %%I in ("%~dp0..") do set "READBACK_HOME=%%~fI"
set "READBACK_JAVA=%READBACK_HOME%\runtime\bin\java.exe"
if exist "%READBACK_JAVA%" goto start
if not defined JAVA_HOME goto look
set "READBACK_JAVA=%JAVA_HOME%\bin\java.exe"
if exist "%READBACK_JAVA%" goto start
echo readback: JAVA_HOME is "%JAVA_HOME%", but there is no bin\java.exe in it. Set it to a Java runtime 17 or newer, or unset it. 1>&2
exit /b 69
:look
for %%I in (java.exe) do set "READBACK_JAVA=%%~$PATH:I"
if defined READBACK_JAVA goto start
echo readback: no Java found. Install a Java runtime 17 or newer, or set JAVA_HOME to one. 1>&2
exit /b 69
:start
set "quick="
if "%~1"=="replay" set "quick=-XX:TieredStopAtLevel=1"
set "READBACK_ARCHIVE=%LOCALAPPDATA%\readback\cache\classes.jsa"
if defined XDG_CACHE_HOME set "READBACK_ARCHIVE=%XDG_CACHE_HOME%\readback\classes.jsa"
if /i not "%READBACK_JAVA%"=="%READBACK_HOME%\runtime\bin\java.exe" goto plain
if not exist "%READBACK_ARCHIVE%" goto plain
rem What setting up and selfcheck put among the caches, so that classes load sooner. Java passes over one that does not fit.
"%READBACK_JAVA%" -XX:+UseSerialGC %quick% "-XX:SharedArchiveFile=%READBACK_ARCHIVE%" -Xlog:disable "-Dreadback.archive=%READBACK_ARCHIVE%" "-Dreadback.home=%READBACK_HOME%" %READBACK_OPTS% -jar "%READBACK_HOME%\lib\readback-assistant-${project.version}.jar" %*
exit /b %ERRORLEVEL%
:plain
"%READBACK_JAVA%" -XX:+UseSerialGC %quick% "-Dreadback.home=%READBACK_HOME%" %READBACK_OPTS% -jar "%READBACK_HOME%\lib\readback-assistant-${project.version}.jar" %*
exit /b %ERRORLEVEL%
