import pytest

from laywright import values
from laywright.errors import InputError
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.page import (
    Card,
    Cards,
    Note,
    Picture,
    Sheet,
    Station,
    Steps,
    Table,
    version_note,
)


def test_a_row_of_another_length_is_named():
    with pytest.raises(InputError, match="row 2 of the table 'Cups'"):
        Table("Cups", ("a", "b"), (("1", "2"), ("3",)))


def test_a_sheet_survives_storage():
    drawing = Drawing(
        "d", (Line("cut", [[0, 0], [1, 1]]), Label("t", "x", (0.0, 1.0))), {"cut": Style(0.5)}
    )
    cards = Cards("c", (Card("ply 1", ("glass", ""), drawing), Card("coat", ())))
    blocks = (
        Note("n"),
        Steps(("s",)),
        Table("t", ("c",), (("1",),)),
        Picture("p", drawing),
        cards,
    )
    sheet = Sheet("job", "3F2A", (Station("Mix", ("hot",), blocks),), "foot")
    back = values.unpack(Sheet, values.pack(sheet))
    assert values.digest(back) == values.digest(sheet)
    assert [type(block) for block in back.stations[0].blocks] == [
        Note,
        Steps,
        Table,
        Picture,
        Cards,
    ]


def test_the_note_names_the_version():
    assert "3F2A" in version_note(Sheet("job", "3F2A", ()))
