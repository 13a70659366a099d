@echo off
rem Starts Hosewright from wherever this file is called.
setlocal
set "app=%~dp0..\app"
set "java=java"
set "release="
for %%j in (java.exe) do if not "%%~$PATH:j"=="" set "release=%%~dp$PATH:j..\release"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" (
  set "java=%JAVA_HOME%\bin\java.exe"
  set "release=%JAVA_HOME%\release"
)
set "version=none"
if defined release if exist "%release%" (
  for /f "usebackq tokens=2 delims==" %%v in (`findstr /b /c:"JAVA_VERSION=" "%release%"`) do set "version=%%~v"
)
set "kept=-XX:SharedArchiveFile=%app%\hosewright.jsa"
if exist "%app%\hosewright-%version%.aot" set "kept=-XX:AOTCache=%app%\hosewright-%version%.aot"
set "compiler=-XX:TieredStopAtLevel=1"
if /i "%~1 %~2"=="tender price" set "compiler=-XX:+TieredCompilation"
"%java%" "%kept%" -Xlog:disable %compiler% -jar "%app%\hosewright.jar" %*
exit /b %ERRORLEVEL%
