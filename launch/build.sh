# Builds Chargehand for running, for the scripts at the root. Sourced after find-jdk.sh, with `root` set to the project folder.
#
# A finished build is copied to build/run/NUMBER and never changed there, so a program that is running keeps its jars while
# the next build is made. build/current holds the NUMBER in use; its time is the moment that build was begun.

current_file=$root/build/current

# Sets `build` to the number of the build in use, or to nothing when there is none or a source is newer than it.
read_fresh_build() {
    build=
    [ -r "$current_file" ] && read -r build <"$current_file" || return 0
    [ -r "$root/build/run/$build/app.jar" ] || build=
    [ -n "$build" ] || return 0
    newer=$(find "$root/pom.xml" "$root"/*/pom.xml "$root"/*/src/main -newer "$current_file" -print 2>/dev/null | head -n 1)
    [ -z "$newer" ] || build=
}

# Waits until no other build is under way and keeps others out until this script ends.
lock_builds() {
    mkdir -p "$root/build"
    if command -v flock >/dev/null 2>&1; then
        exec 9>"$root/build/lock"
        flock -n 9 && return 0
        echo "Another build of Chargehand is under way; waiting for it." >&2
        flock 9
    else
        until mkdir "$root/build/lock.d" 2>/dev/null; do
            holder=$(cat "$root/build/lock.d/holder" 2>/dev/null)
            [ -z "$holder" ] || kill -0 "$holder" 2>/dev/null || rm -rf "$root/build/lock.d"
            sleep 1
        done
        trap 'rm -rf "$root/build/lock.d"' EXIT
        trap 'exit 130' INT
        trap 'exit 143' TERM
        echo $$ >"$root/build/lock.d/holder"
    fi
}

unlock_builds() {
    if command -v flock >/dev/null 2>&1; then
        exec 9>&-
    else
        rm -rf "$root/build/lock.d"
        trap - EXIT INT TERM
    fi
}

# Runs Maven in the project folder: the wrapper, or the machine's own mvn where the wrapper cannot fetch its Maven.
maven() {
    if [ -z "${maven_command:-}" ]; then
        maven_command=$root/mvnw
        (cd "$root" && "$maven_command" --version >/dev/null 2>&1) || maven_command=$(command -v mvn) || {
            echo "Maven could not be fetched (see ./mvnw --version), and there is no mvn on this machine to use in its place." >&2
            return 3
        }
    fi
    (cd "$root" && "$maven_command" -B -ntp "$@")
}

mark_build_begun() {
    mkdir -p "$root/build/run"
    : >"$root/build/begun"
}

# Copies what Maven packaged into a folder of its own, makes it the current build, and sets `build`.
keep_build() {
    packaged=$root/app/target
    timing=$root/timing/target/timing.jar
    build=$(cat "$packaged/app.jar" "$packaged"/lib/*.jar "$timing" | cksum | tr ' ' '-')
    if [ ! -r "$root/build/run/$build/app.jar" ]; then
        rm -rf "$root/build/run/$build" "$root/build/run/$build.part"
        mkdir "$root/build/run/$build.part"
        cp -R "$packaged/lib" "$packaged/app.jar" "$timing" "$root/build/run/$build.part/"
        mv "$root/build/run/$build.part" "$root/build/run/$build"
    fi
    touch "$root/build/run/$build"
    echo "$build" >"$root/build/next"
    touch -r "$root/build/begun" "$root/build/next"
    mv "$root/build/next" "$current_file"
    # The newest four stay, for programs still running from them.
    (cd "$root/build/run" && ls -t | tail -n +5 | while read -r old; do rm -rf "./${old:?}"; done)
}

# Makes `build` a build of the sources as they are, building when needed. Says so on standard error, never on standard output.
use_build() {
    read_fresh_build
    [ -z "$build" ] || return 0
    lock_builds
    read_fresh_build
    if [ -z "$build" ]; then
        echo "Building Chargehand: a minute or two the first time, seconds later on." >&2
        mark_build_begun
        if ! maven -q -Dquick -Dmaven.test.skip=true package >"$root/build/log" 2>&1 </dev/null; then
            tail -n 25 "$root/build/log" >&2
            echo "Chargehand could not be built; the whole of what was said is in $root/build/log" >&2
            return 3
        fi
        keep_build
    fi
    unlock_builds
}

# How the JVM is run: quick to start and small. One list, so that a class archive fits every run that uses it.
jvm_settings="-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Djava.awt.headless=true"

# Sets `archive` to the class archive of the build in use for the JDK in use, rehearsing to make it where there is none. Its
# name holds both, since the archive of another build or JDK is refused by the JVM.
use_archive() {
    read_jdk_version "$JAVA_HOME"
    archive=$root/build/run/$build/classes-$jdk_version_text.jsa
    [ -r "$archive" ] && return 0
    "$JAVA_HOME/bin/java" $jvm_settings -Dchargehand.home="$root" -Xlog:disable -XX:ArchiveClassesAtExit="$archive.$$" \
        -cp "$root/build/run/$build/app.jar" chargehand.app.Rehearsal </dev/null >/dev/null 2>&1 &&
        mv "$archive.$$" "$archive" || rm -f "$archive.$$"
}
