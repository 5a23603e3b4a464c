# Finds a Python that has ezdxf, a general reader of DXF that knows nothing of this project, installing Debian's package where
# there is none. Sourced: `find_dxf_reader` sets and exports DXF_PYTHON, or says what to do and returns 3. DXF_PYTHON may be
# set beforehand to use another. Needs install_package from install-package.sh.

python_with_ezdxf() {
    for program in "${DXF_PYTHON:-}" python3 /usr/bin/python3; do
        if [ -n "$program" ] && "$program" -c 'import ezdxf' >/dev/null 2>&1; then
            DXF_PYTHON=$program
            return 0
        fi
    done
    return 1
}

find_dxf_reader() {
    if python_with_ezdxf || { install_package python3-ezdxf "the check of DXF files" && python_with_ezdxf; }; then
        export DXF_PYTHON
        return 0
    fi
    echo "The check of DXF files needs Python with ezdxf and it could not be installed here. Install it (Debian: sudo apt-get" >&2
    echo "install python3-ezdxf), or set DXF_PYTHON to a Python that has it, then run this again." >&2
    return 3
}
