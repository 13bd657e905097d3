from __future__ import annotations

from job_sheet_demo import inputs, texts_on
from laywright.files.page import Table
from laywright.shop.sheet.bag_station import bag_station


def test_every_piece_has_its_size_and_the_leak_test_room_to_write():
    bag = inputs()["bench"].bag
    station = bag_station(bag)
    pieces, leak = (block for block in station.blocks if isinstance(block, Table))
    assert [row[:4] for row in pieces.rows] == [
        (piece.item, piece.card, f"{piece.length:.0f}", f"{piece.width:.0f}")
        for piece in bag.pieces
    ]
    assert all(row[1:] == ("", "", "") for row in leak.rows)
    said = " ".join(texts_on(station.blocks))
    assert f"Sealant tape {bag.tape_mm / 1000.0:.1f} m, with {bag.pleats} pleats" in said
    assert any("hollow mould can give way" in caution for caution in station.cautions)
