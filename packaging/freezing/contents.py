"""What goes into the frozen program and what stays out; known by name, without looking inside."""

from pathlib import Path, PurePosixPath

# What the program reads while it runs; the pictures and the scripts that make tables stay behind.
RESOURCES = ("*.csv", "*.json", "README.md", "language/*.qm")
LIBRARY_DATA = (("skyfield_data", "data/de421.bsp"),)  # package, and the file of it that is read
# Never imported by the program, though libraries know ways to them.
EXCLUDED_MODULES = (
    "tkinter",
    "matplotlib",
    "IPython",
    "pytest",
    "hypothesis",
    "PIL",
    "pandas",
    "h5py",
    "numba",
    "cupy",
    "setuptools",
    "pip",
    "PyQt5",
    "PyQt6",
    "PySide2",
    "OpenGL",
    "lib2to3",
    "pydoc_data",
    "pyqtgraph.examples",
    "pyqtgraph.opengl",
    "PySide6.QtNetwork",
    "PySide6.QtPrintSupport",
    "PySide6.QtQml",
    "PySide6.QtQuick",
    "PySide6.QtSql",
    "PySide6.QtUiTools",
    "PySide6.QtXml",
)
# Of the toolkit, by the beginning of their names without "lib".
EXCLUDED_OF_TOOLKIT = (
    # libraries that come along with a plugin of no use here
    "Qt6Qml",
    "Qt6Quick",
    "Qt6VirtualKeyboard",
    "Qt6Pdf",
    "Qt6Network",
    "Qt6EglF",
    "Qt6Sql",
    "Qt63D",
    "Qt6WaylandEglCompositor",
    "Qt6WaylandCompositor",
    # plugins that would bring half a desktop along, or draw on a bare screen
    "qtvirtualkeyboardplugin",
    "qgtk3",
    "qpdf",
    "qeglfs",
    "qlinuxfb",
    "qminimal",
    "qvnc",
    "qvkkhrdisplay",
)
EXCLUDED_PLUGINS = (
    "egldeviceintegrations",
    "generic",
    "networkinformation",
    "qmltooling",
    "sqldrivers",
    "tls",
)
# Every desktop has these, and its drivers and settings fit them: older ones would not do.
LEFT_TO_THE_SYSTEM = (
    "libstdc++.so",
    "libgcc_s.so",
    "libX11.so",
    "libX11-xcb.so",
    "libxcb.so",
    "libfontconfig.so",
    "libfreetype.so",
    "libwayland-",
    "libdrm.so",
    "libEGL.so",
    "libGL.so",
    "libGLX",
    "libGLdispatch",
    "libgtk-",
    "libgdk",
    "libatk",
    "libpango",
    "libcairo",
)
NOT_READ = ("eopc04.1962-now", "ReadMe.", "README.rst")  # of the tables of the Earth's rotation


def resources(checkout: Path) -> list[tuple[str, str]]:
    """(file, folder inside the frozen program) of everything the program reads."""
    found = [path for pattern in RESOURCES for path in (checkout / "resources").glob(pattern)]
    return [(str(path), path.parent.relative_to(checkout).as_posix()) for path in sorted(found)]


def is_wanted(destination: str) -> bool:
    """Whether the file that would lie at this place inside the frozen program is of use to it."""
    place = PurePosixPath(destination.replace("\\", "/"))
    if place.parts[0] in ("PySide6", "shiboken6"):
        return _is_wanted_of_toolkit(place)
    if place.parts[0] == "astropy_iers_data":
        return not place.name.startswith(NOT_READ)
    return not place.name.startswith(LEFT_TO_THE_SYSTEM)


def _is_wanted_of_toolkit(place: PurePosixPath) -> bool:
    if "translations" in place.parts:
        return place.name.startswith("qtbase_")
    if not set(EXCLUDED_PLUGINS).isdisjoint(place.parts):
        return False
    return not place.name.removeprefix("lib").startswith(EXCLUDED_OF_TOOLKIT)
