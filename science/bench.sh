#!/bin/sh
# Runs the benchmarks of this module; arguments go to JMH, for example: science/bench.sh mixture -p components=10
# science/bench.sh design measures the search for designs.
# MAVEN=./mvnw uses the wrapper in place of an installed Maven.
set -e
cd "$(dirname "$0")/.."
maven=${MAVEN:-mvn}
"$maven" -q -B -pl science test-compile
"$maven" -q -B -pl science dependency:build-classpath -Dmdep.outputFile=target/bench-classpath -DincludeScope=test
if [ "${1:-}" = design ]; then # designs against plain exchange: one table, with the JVM options of ./stillroom
    exec java -Xmx160m -XX:+UseSerialGC -XX:TieredStopAtLevel=1 \
        -cp "science/target/test-classes:science/target/classes:$(cat science/target/bench-classpath)" \
        stillroom.science.bench.DesignBenchmark
fi
exec java -cp "science/target/test-classes:science/target/classes:$(cat science/target/bench-classpath)" \
    org.openjdk.jmh.Main "$@"
