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
"%JAVA%" -jar "%~dp0weekwright.jar" %*
