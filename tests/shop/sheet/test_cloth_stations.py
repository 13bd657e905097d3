import dataclasses

from job_sheet_demo import inputs, station_of, table_of, texts_on
from laywright.files.page import Cards, Picture, Steps, Table
from laywright.shop.bench.roll_summary import CutLine, LandingLine, RollLine
from laywright.shop.sheet.cloth_stations import cut_station, lay_up_station
from laywright.shop.sheet.traveller import make_sheet


def test_weigh_in_has_the_planned_mass_of_every_piece_and_a_blank(made):
    table = table_of(station_of(made, "Cut cloth"), "Weigh-in")
    planned = table.columns.index("Planned, g")
    assert [row[planned] for row in table.rows] == ["31.3", "25.0"]
    assert all(row[table.columns.index("Weighed, g")] == "" for row in table.rows)


def test_every_ply_has_a_card_with_its_picture_its_cup_and_room_to_sign(made):
    station = station_of(made, "Lay up")
    (cards,) = (block.cards for block in station.blocks if isinstance(block, Cards))
    assert [card.title for card in cards] == ["Ply 1", "Ply 2"]
    assert all(card.drawing is not None for card in cards)
    assert [card.lines[1].split("°")[0] for card in cards] == ["0", "45"]
    assert all(card.lines[2].startswith("cup 1; about ") for card in cards)
    assert all(card.lines[-2:] == ("Laid at, by:", "") for card in cards)


def test_coats_have_cards_before_and_after_the_plies():
    given = inputs()
    mix = given["shop"].mix
    (cup,) = mix.cups
    cups = (
        dataclasses.replace(cup, uses=("seal coat", *cup.uses)),
        dataclasses.replace(cup, number=2, uses=("fill coat",), plies=(), stir_at_minutes=600.0),
    )
    given["shop"] = dataclasses.replace(
        given["shop"], mix=dataclasses.replace(mix, cups=cups, coats_g=20.0)
    )
    made = make_sheet(**given)
    (cards,) = (b.cards for b in station_of(made, "Lay up").blocks if isinstance(b, Cards))
    assert [card.title for card in cards] == ["Seal coat", "Ply 1", "Ply 2", "Fill coat"]
    assert "at 10.0\u00a0h" in cards[-1].lines[0]
    assert "and 20 g in coats" in " ".join(texts_on(station_of(made, "Mix").blocks))


def test_cups_show_cumulative_scale_readings(made):
    (cup,) = inputs()["shop"].mix.cups
    table = table_of(station_of(made, "Mix"), "Cups")
    assert table.rows[0][:4] == (
        "1",
        "ply 1, ply 2",
        f"{cup.scale_after_resin:g}",
        f"{cup.scale_after_hardener:g}",
    )
    assert cup.scale_after_resin + cup.hardener_g == cup.scale_after_hardener
    said = " ".join(texts_on(station_of(made, "Mix").blocks))
    assert all(text in said for text in inputs()["shop"].mix.ratio_texts)


def test_check_bars_are_left_out_of_pictures_that_are_not_to_scale(made):
    pictures = [b for b in station_of(made, "Cut cloth").blocks if isinstance(b, Picture)]
    patterns = pictures[-1].drawing
    assert "cut" in patterns.layers
    assert "check bar" not in patterns.layers


def test_where_patterns_land_stands_beside_the_view_from_above():
    given = inputs()
    line = LandingLine("ply 1, ply 3", (210.2, 149.6), (("warp ahead", (210.0, -0.4)),))
    drawing = given["patterns"][0].drawing
    laminate = dataclasses.replace(given["laminate"], view=drawing, landings=(line,))
    station = lay_up_station(laminate, given["shop"].mix)
    (table,) = [b for b in station.blocks if isinstance(b, Table) and "land" in b.heading]
    assert table.columns == (
        "Pattern",
        "Start point from rear | right edge",
        "Warp ahead from the start",
    )
    assert table.rows == (("ply 1, ply 3", "210 | 150", "210 | 0"),)
    assert any(isinstance(b, Picture) and "From above" in b.caption for b in station.blocks)
    kinds = [type(b) for b in station.blocks]
    assert kinds.index(Cards) < kinds.index(Steps) < station.blocks.index(table)


def test_the_cut_list_has_a_box_for_every_piece():
    piece = CutLine(1, "ply 2", 2, 0.0, (0.0, 12.4), (300.0, 200.0), True, True)
    roll = RollLine(
        "glass", 1000.0, 480.0, 0.7, None, 500.0, (3210.0, 3100.0), ((150, 900),), (piece,)
    )
    station = cut_station(inputs()["patterns"], (roll,))
    cloth, cut = [b for b in station.blocks if isinstance(b, Table)][:2]
    assert cloth.rows == (("glass", "1000", "480", "0.50", "70", "3.2 | 3.1", "150 x 900"),)
    assert cut.rows[0][:7] == ("1", "ply 2", "0", "12", "300", "200", "down, back")
