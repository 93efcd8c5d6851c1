@echo off
rem Starts Hornbook on Windows: finds a JDK 25, builds what is not built yet, and runs.
setlocal EnableDelayedExpansion
chcp 65001 >nul
set "VIEWER=%~dp0"
for %%I in ("%VIEWER%..") do set "ROOT=%%~fI"
set "APP=%VIEWER%target\app"

set "JDK="
if defined JAVA_HOME call :look "%JAVA_HOME%"
for /d %%D in ("%ProgramFiles%\Eclipse Adoptium\jdk-25*" "%ProgramFiles%\Java\jdk-25*" "%ProgramFiles%\Microsoft\jdk-25*" "%USERPROFILE%\.jdks\*") do if not defined JDK call :look "%%~fD"
if not defined JDK (
  echo hornbook: needs a JDK 25 ^(with javac^); set JAVA_HOME to one 1>&2
  exit /b 4
)

if not exist "%APP%\hornbook.jar" (
  where mvn >nul 2>nul || (
    echo hornbook: needs Maven 3.8.7 or newer ^(mvn^) on the PATH to build itself on first use 1>&2
    exit /b 4
  )
  echo hornbook: building ^(the first time takes a minute or two^)... 1>&2
  set "JAVA_HOME=!JDK!"
  pushd "%ROOT%"
  call mvn -q -B -ntp -Dmaven.test.skip=true -Dspotless.check.skip=true package 1>&2 || (
    popd
    echo hornbook: the build failed; what Maven said is above 1>&2
    exit /b 4
  )
  popd
)

"%JDK%\bin\java" -Xmx1g -XX:+UseSerialGC --enable-native-access=javafx.graphics,ALL-UNNAMED -p "%APP%\fx" --add-modules javafx.controls -cp "%APP%\hornbook.jar;%APP%\lib\*" hornbook.viewer.Main %*
exit /b %ERRORLEVEL%

:look
if exist "%~1\release" if exist "%~1\bin\javac.exe" findstr /b /c:"JAVA_VERSION=\"25" "%~1\release" >nul 2>nul && set "JDK=%~1"
goto :eof
