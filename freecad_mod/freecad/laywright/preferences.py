"""What a person set once for all jobs: cards of one's own, paper, colours, live preview.

It stands in FreeCAD's own tree of parameters.  The core is loaded only where its cards are
read, so that the preferences can be looked at while packages are missing.
"""

from pathlib import Path

import FreeCAD

__all__ = [
    "GROUP",
    "PAPERS",
    "card_folder",
    "chosen_folder",
    "decimal_mark",
    "drop_printer",
    "first_printer",
    "keep_printer",
    "live",
    "materials",
    "own_printers",
    "paper",
    "printer",
    "printer_folder",
    "printers",
    "ramp",
    "records_folder",
    "set_choice",
    "set_live",
    "usual_folder",
]

GROUP = "User parameter:BaseApp/Preferences/Mod/Laywright"

_PRINTER = "Medium, 220 x 220 x 250 mm"
PAPERS = ("A4", "Letter", "A3")
_USUAL = {"MaterialsFolder": "cards", "PrintersFolder": "printers", "RecordsFolder": "records"}


def materials():
    """Return the material cards: those that come along and those of the person's folder."""
    from laywright.laminate.materials import load_materials

    folder = card_folder()
    return load_materials(folder if folder.is_dir() else None)


def card_folder():
    """Return the folder of the person's own cards; it may not be there yet."""
    return _folder("MaterialsFolder")


def printer_folder():
    """Return the folder of the person's own printers; it may not be there yet."""
    return _folder("PrintersFolder")


def records_folder():
    """Return the folder of the records of made parts; it may not be there yet."""
    return _folder("RecordsFolder")


def chosen_folder(name):
    """Return the folder that a person has set by the name of its parameter, "" for none."""
    return _texts().GetString(name, "")


def usual_folder(name):
    """Return the folder that is taken where none is set, by the name of the parameter."""
    return Path(FreeCAD.getUserAppDataDir()) / "Laywright" / _USUAL[name]


def printers():
    """Return the printers by name, those of the person's folder among them."""
    from laywright.mould.tiles.printer import load_printers

    folder = printer_folder()
    return load_printers(folder if folder.is_dir() else None)


def printer(name):
    """Return the printer of that name; the one that a new job takes where the name is empty."""
    from laywright.errors import InputError

    known, wanted = printers(), name or first_printer()
    if wanted not in known:
        raise InputError("Printer", f"'{wanted}'", f"one of {', '.join(known)}", "choose one")
    return known[wanted]


def own_printers():
    """Return the names of the printers of the person's folder."""
    from laywright.mould.tiles import printer

    folder = printer_folder()
    return list(printer.own_printers(folder)) if folder.is_dir() else []


def keep_printer(printer):
    """Keep a printer's card in the person's folder, which is made where there is none."""
    from laywright.mould.tiles.printer import save_printer

    save_printer(printer, printer_folder())


def drop_printer(name):
    """Take the card of a printer out of the person's folder."""
    from laywright.mould.tiles import printer

    printer.drop_printer(name, printer_folder())


def first_printer():
    """Return the name of the printer that a new job takes."""
    wanted = _texts().GetString("Printer", _PRINTER)
    return wanted if wanted in printers() else _PRINTER


def paper():
    """Return the paper of new Job Sheets."""
    number = _texts().GetInt("Paper", 0)
    return PAPERS[number] if 0 <= number < len(PAPERS) else PAPERS[0]


def decimal_mark():
    """Return what stands between whole and fraction on new Job Sheets: point or comma."""
    return "comma" if _texts().GetString("DecimalMark", "") == "comma" else "point"


def ramp():
    """Return the colours of maps, from low to high."""
    from laywright.files.scale import Ramp

    wanted = _texts().GetString("Ramp", "")
    return next((one for one in Ramp if one.value == wanted), Ramp.SAND_TO_PLUM)


def live():
    """Return whether task panels show changes at once."""
    return _texts().GetBool("Live", True)


def set_live(wanted):
    """Remember whether task panels show changes at once."""
    _texts().SetBool("Live", wanted)


def set_choice(name, value):
    """Remember a choice: a folder, Printer, Paper, DecimalMark or Ramp.

    Parameters
    ----------
    name : str
        Of the parameter.
    value : str
        What was chosen; "" takes what comes along.
    """
    if name == "Paper":
        _texts().SetInt(name, PAPERS.index(value))
    elif value:
        _texts().SetString(name, value)
    else:
        _texts().RemString(name)


def _texts():
    return FreeCAD.ParamGet(GROUP)


def _folder(name):
    return Path(chosen_folder(name) or usual_folder(name))
