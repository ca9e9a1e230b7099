#!/bin/sh
# Compares generated blends with GLPK and CBC (on Debian: apt-get install glpk-utils coinor-cbc): objectives and processor time in one run.
# Arguments: seconds that each solver may take, first seed, last seed, and (optional) a shape of blends or all, and the number of limits. Usually 20 1 40.
# MAVEN=./mvnw uses the wrapper in place of an installed Maven.
set -e
cd "$(dirname "$0")/.."
for solver in glpsol cbc; do command -v $solver >/dev/null || { echo "$solver is not installed (Debian: apt-get install glpk-utils coinor-cbc)" >&2; exit 1; }; done
maven=${MAVEN:-mvn}
"$maven" -q -B -pl science test-compile
[ $# -gt 0 ] || set -- 20 1 40
exec java -XX:TieredStopAtLevel=1 -cp "science/target/test-classes:science/target/classes" stillroom.science.bench.BlendComparison "$@"
