"""What binutils say of a library or an archive of objects."""

import subprocess


def output(*command):
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout


def undefined_symbols(library):
    """What the library takes from others, as C++ writes it, without versions."""
    names = [line.split()[-1].split("@")[0] for line in output("nm", "-D", "--undefined-only", library).splitlines()]
    return dict(zip(names, subprocess.run(["c++filt"], input="\n".join(names), check=True, capture_output=True,
                                          text=True).stdout.splitlines()))


def exported_symbols(library):
    return [line.split()[-1].split("@")[0] for line in output("nm", "-D", "--defined-only", library).splitlines()]


def needed_libraries(library):
    return [line.split("[")[1].rstrip("]") for line in output("readelf", "-dW", library).splitlines()
            if "(NEEDED)" in line]


def allowed(path):
    """The lines of an allow-list. Lines that start with # say why the ones below them are allowed."""
    with open(path, encoding="utf-8") as lines:
        return [line.strip() for line in lines if line.strip() and not line.startswith("#")]
