# Finds Chromium for the page tests, installing Debian's package where there is none. Sourced: `find_chromium` sets and
# exports CHROMIUM, or says what to do and returns 3. CHROMIUM may be set beforehand to use another. Needs
# install_package from install-package.sh.

chromium_on_path() {
    for name in chromium chromium-browser google-chrome-stable google-chrome; do
        CHROMIUM=$(command -v "$name" 2>/dev/null) && return 0
    done
    return 1
}

find_chromium() {
    # Playwright must drive the machine's own browser and fetch none.
    export PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD=1
    if [ -n "${CHROMIUM:-}" ] && [ -x "$CHROMIUM" ] || chromium_on_path || { install_package chromium "the page tests" && chromium_on_path; }; then
        export CHROMIUM
        return 0
    fi
    echo "The page tests need Chromium and it could not be installed here. Install it (Debian: sudo apt-get install chromium)," >&2
    echo "or set CHROMIUM to the browser's program, then run this again." >&2
    return 3
}
