"""What a layup gives, told and drawn while it is being edited."""

import html
from types import SimpleNamespace

from freecad.laywright.objects.layup import loading_of
from freecad.laywright.panels import fields
from freecad.laywright.panels.picture import DrawingView
from freecad.laywright.qt import QtCore, QtWidgets, translate
from freecad.laywright.translated import translated
from laywright.errors import LaywrightError
from laywright.job.laminate_pictures import section_drawing, stiffness_polar
from laywright.job.load_page import load_page
from laywright.laminate.certainty import how_sure
from laywright.laminate.drop_off import drop_off_words
from laywright.laminate.equal_sheet import equal_sheets
from laywright.laminate.laminate import analyse

__all__ = ["LaminateLook"]

_PAUSE = 150  # ms after the last change
_STACK_WIDTH = 25.0  # mm of the drawing, so that its words can be read in a narrow panel


class LaminateLook(QtWidgets.QWidget):
    """Figures, stack, stiffness all round and what it carries; nothing is written anywhere.

    Parameters
    ----------
    proxy : LayupObject
        Makes the layup from values.
    values : callable
        Returns the present values of the fields by property name; may raise a LaywrightError.
    sheets : iterable of PlainSheet
        To compare with.

    Attributes
    ----------
    laminate : Laminate or None
        What was looked at last.
    """

    def __init__(self, proxy, values, sheets):
        super().__init__()
        self.setObjectName("LaminateLook")
        self._proxy, self._values, self._sheets = proxy, values, sheets
        self.laminate, self._seen = None, None
        column = QtWidgets.QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self._words, self._load = (
            fields.wrapped_label(name) for name in ("LaminateFigures", "LoadFigures")
        )
        column.addWidget(self._words)
        self._pictures = QtWidgets.QTabWidget()
        self._stack, self._round, self._carries = (
            DrawingView(name) for name in ("StackPicture", "StiffnessPicture", "LoadPicture")
        )
        for view, title in (
            (self._stack, translate("Laywright", "Stack")),
            (self._round, translate("Laywright", "Stiffness")),
            (self._carries, translate("Laywright", "Load")),
        ):
            self._pictures.addTab(view, title)
        column.addWidget(self._pictures)
        column.addWidget(self._load)
        self._later = QtCore.QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(_PAUSE)
        self._later.timeout.connect(self.look)

    def watch(self, widget):
        """Look again whenever something in a widget is changed."""
        for part in (widget, *widget.findChildren(QtWidgets.QWidget)):
            if isinstance(part, QtWidgets.QComboBox):
                part.currentIndexChanged.connect(self.look_soon)
            elif isinstance(part, (QtWidgets.QLineEdit, QtWidgets.QPlainTextEdit)):
                part.textChanged.connect(self.look_soon)

    def look_soon(self, *_):
        """Look again after a short pause."""
        self._later.start()

    def look(self):
        """Compute and show what the present values give, or say why they give nothing."""
        try:
            draft = SimpleNamespace(**self._values())
            (layup,) = self._proxy.inputs(draft)
            loading = loading_of(draft)
            laminate = analyse(layup)
        except LaywrightError as problem:
            self._words.setText(html.escape(translated(problem)))
            return
        seen = (laminate.digest, loading)
        if seen == self._seen:
            return
        self._seen, self.laminate = seen, laminate
        page = None if loading is None else load_page(laminate, loading)
        ends = (html.escape(translated(line)) for line in drop_off_words(laminate))
        lines = (*_lines(laminate), *ends, *self._equals(laminate))
        self._words.setText("<br>".join(lines))
        self._load.setText("<br>".join(_load_lines(page)))
        self._stack.draw(section_drawing(laminate, _STACK_WIDTH))
        self._round.draw(stiffness_polar(laminate))
        self._carries.draw(None if page is None else page.picture)
        self._pictures.setTabEnabled(2, page is not None and page.picture is not None)

    def _equals(self, laminate):
        """Return the comparison with plain sheets as a line of rich text."""
        equals = [
            f"{html.escape(sheet.name)} {sheet.thickness:.2f} mm, {sheet.areal_mass:.0f} g/m²"
            for sheet in equal_sheets(laminate, self._sheets)
        ]
        if not equals:
            return ()
        words = translate("Laywright", "As stiff when bent: {0}.")
        return (words.format("; ".join(equals)),)


def _lines(laminate):
    """Return the figures as lines of rich text, each with the band of nine parts in ten."""
    bands = {band.name: band for band in how_sure(laminate.layup).bands}

    def told(title, name, unit, digits, scale=1.0):
        band = bands[name]
        planned, low, high = (
            f"{v * scale:.{digits}f}" for v in (band.planned, band.low, band.high)
        )
        return f"<b>{title}</b> {planned} {unit} ({low} … {high})"

    state = laminate.state
    return [
        told(translate("Laywright", "Thickness"), "thickness", "mm", 2),
        told(translate("Laywright", "Mass"), "mass", "g/m²", 0),
        told(translate("Laywright", "Pulled along"), "modulus along", "GPa", 1, 1e-3),
        told(translate("Laywright", "Pulled across"), "modulus across", "GPa", 1, 1e-3),
        told(translate("Laywright", "Bending along"), "bending stiffness along", "N m", 2, 1e-3),
        told(translate("Laywright", "Bending across"), "bending stiffness across", "N m", 2, 1e-3),
        translate("Laywright", "In brackets: nine of ten parts. What matters most: {0}.").format(
            html.escape(bands["bending stiffness along"].matters)
        ),
        " ".join(
            (
                translate("Laywright", "Symmetric.")
                if state.symmetric
                else translate("Laywright", "Not symmetric."),
                translate("Laywright", "Balanced.")
                if state.balanced
                else translate("Laywright", "Not balanced."),
            )
        ),
    ]


def _load_lines(page):
    """Return what is said about the load as lines of rich text."""
    if page is None:
        return ()
    return tuple(
        f"<b>{html.escape(translated(note))}</b>" if place == 0 else html.escape(translated(note))
        for place, note in enumerate(page.notes)
    )
