@echo off
rem Starts Weekwright with the Java of JAVA_HOME, else the one on the path.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo Weekwright needs Java 17 or later, and found none: install a JDK or JRE, or set JAVA_HOME. 1>&2
  exit /b 2
)
rem What Java may have kept of the program to start sooner: START.txt says how. Where it does not fit, Java goes without.
set "KEPT=%~dp0weekwright.jsa"
if exist "%KEPT%" (
  "%JAVA%" "-XX:SharedArchiveFile=%KEPT%" -Xlog:cds=off -Xlog:cds+dynamic=off -jar "%~dp0weekwright.jar" %*
  exit /b
)
"%JAVA%" -jar "%~dp0weekwright.jar" %*
