# Finds a JDK of 21 or later, for the scripts at the root. Sourced, not run: `find_jdk` sets and exports JAVA_HOME, or says how
# to get a JDK and returns 3. It starts no process where it can help it, since every command waits for it.
#
# Order: JAVA_HOME, the java on the PATH, then the newest in the usual folders. CHARGEHAND_JDK_FOLDERS replaces those
# folders (space-separated patterns, each matching JDK homes).

oldest_jdk=21
usual_jdk_folders="/usr/lib/jvm/* /usr/lib64/jvm/* /usr/java/* /usr/local/java/* /opt/*jdk* /opt/java/* /opt/jdks/*
$HOME/.sdkman/candidates/java/* $HOME/.jdks/* $HOME/.asdf/installs/java/* $HOME/.local/share/mise/installs/java/*
/Library/Java/JavaVirtualMachines/*/Contents/Home $HOME/Library/Java/JavaVirtualMachines/*/Contents/Home
/opt/homebrew/opt/openjdk*/libexec/openjdk.jdk/Contents/Home /usr/local/opt/openjdk*/libexec/openjdk.jdk/Contents/Home"

# Sets jdk_version to the feature number of the JDK at $1 and jdk_version_text to the whole; 0 and nothing if that is no JDK
# (no compiler, no version to be read).
read_jdk_version() {
    jdk_version=0
    jdk_version_text=
    [ -x "$1/bin/javac" ] && [ -x "$1/bin/java" ] && [ -r "$1/release" ] || return 0
    while IFS='=' read -r key value; do
        [ "$key" = JAVA_VERSION ] || continue
        value=${value#\"}
        jdk_version_text=${value%\"}
        value=${value%%[!0-9]*}
        jdk_version=${value:-0}
        return 0
    done <"$1/release"
}

is_good_jdk() {
    read_jdk_version "$1"
    [ "$jdk_version" -ge "$oldest_jdk" ]
}

find_jdk() {
    if [ -n "${JAVA_HOME:-}" ] && is_good_jdk "$JAVA_HOME"; then
        export JAVA_HOME
        return 0
    fi

    on_path=$(command -v javac 2>/dev/null) && on_path=$(readlink -f "$on_path" 2>/dev/null)
    if [ -n "$on_path" ] && is_good_jdk "${on_path%/bin/javac}"; then
        JAVA_HOME=${on_path%/bin/javac}
        export JAVA_HOME
        return 0
    fi

    newest_home=
    newest_version=0
    for home in ${CHARGEHAND_JDK_FOLDERS-$usual_jdk_folders}; do
        read_jdk_version "$home"
        if [ "$jdk_version" -ge "$oldest_jdk" ] && [ "$jdk_version" -gt "$newest_version" ]; then
            newest_home=$home
            newest_version=$jdk_version
        fi
    done
    if [ -n "$newest_home" ]; then
        JAVA_HOME=$newest_home
        export JAVA_HOME
        return 0
    fi

    cat >&2 <<END
Chargehand needs a JDK of version $oldest_jdk or later, and none was found (looked at JAVA_HOME, the PATH and the usual folders).
Get one in any of these ways, then run this again:
  Debian 13, Ubuntu 24.04   sudo apt-get install openjdk-21-jdk
  Debian 12 and others      a JDK package from https://adoptium.net (it goes to /usr/lib/jvm)
  Fedora                    sudo dnf install java-21-openjdk-devel
  macOS                     brew install openjdk@21
Where one is already here but in another folder: export JAVA_HOME=/that/folder
END
    return 3
}
