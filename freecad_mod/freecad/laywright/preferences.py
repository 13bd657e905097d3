"""What a person set once for all jobs: folders with cards of one's own, printer, paper."""

from pathlib import Path

import FreeCAD

from laywright.laminate.materials import load_materials
from laywright.mould.printer import load_printers, save_printer

__all__ = [
    "GROUP",
    "card_folder",
    "first_printer",
    "keep_printer",
    "live",
    "materials",
    "paper",
    "printers",
    "set_live",
]

GROUP = "User parameter:BaseApp/Preferences/Mod/Laywright"

_PRINTER = "Medium, 220 x 220 x 250 mm"


def materials():
    """Return the material cards: those that come along and those of the person's folder."""
    folder = card_folder()
    return load_materials(folder if folder.is_dir() else None)


def card_folder():
    """Return the folder of the person's own cards; it may not be there yet."""
    text = _texts().GetString("MaterialsFolder", "")
    return Path(text or Path(FreeCAD.getUserAppDataDir()) / "Laywright" / "cards")


def printers():
    """Return the printers by name, those of the person's folder among them."""
    return load_printers(_folder("PrintersFolder"))


def keep_printer(printer):
    """Keep a printer's card in the person's folder, which is made where there is none."""
    text = _texts().GetString("PrintersFolder", "")
    folder = Path(text or Path(FreeCAD.getUserAppDataDir()) / "Laywright" / "printers")
    save_printer(printer, folder)
    _texts().SetString("PrintersFolder", str(folder))


def first_printer():
    """Return the name of the printer that a new job takes."""
    wanted = _texts().GetString("Printer", _PRINTER)
    return wanted if wanted in printers() else _PRINTER


def paper():
    """Return the paper of new Job Sheets."""
    return "Letter" if _texts().GetInt("Paper", 0) == 1 else "A4"


def live():
    """Return whether task panels show changes at once."""
    return _texts().GetBool("Live", True)


def set_live(wanted):
    """Remember whether task panels show changes at once."""
    _texts().SetBool("Live", wanted)


def _texts():
    return FreeCAD.ParamGet(GROUP)


def _folder(name):
    text = _texts().GetString(name, "")
    return Path(text) if text and Path(text).is_dir() else None
