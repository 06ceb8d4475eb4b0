"""Takes of astropy what the program imports; the hook that comes with the builder takes it all."""

from PyInstaller.utils.hooks import collect_data_files, copy_metadata

datas = copy_metadata("astropy") + collect_data_files("astropy", includes=["CITATION", "*.cfg"])
