@echo off
rem Starts Hosewright from wherever this file is called.
setlocal
set "app=%~dp0..\app"
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
set "compiler=-XX:TieredStopAtLevel=1"
if /i "%~1 %~2"=="tender price" set "compiler=-XX:+TieredCompilation"
"%java%" -Xshare:auto -XX:SharedArchiveFile="%app%\hosewright.jsa" -Xlog:disable %compiler% -jar "%app%\hosewright.jar" %*
exit /b %ERRORLEVEL%
