#!/bin/sh
# Runs the benchmarks of this module; arguments go to JMH, for example: science/bench.sh mixture -p components=10
# MAVEN=./mvnw uses the wrapper in place of an installed Maven.
set -e
cd "$(dirname "$0")/.."
maven=${MAVEN:-mvn}
"$maven" -q -B -pl science test-compile
"$maven" -q -B -pl science dependency:build-classpath -Dmdep.outputFile=target/bench-classpath -DincludeScope=test
exec java -cp "science/target/test-classes:science/target/classes:$(cat science/target/bench-classpath)" \
    org.openjdk.jmh.Main "$@"
