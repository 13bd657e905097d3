from laywright.shop.record.record_words import ClothWeight, card_remarks, mass_remarks, void_remarks


def test_a_part_as_planned_needs_no_words():
    assert mass_remarks(100.0, 104.0, 0.5, 0.51, None, 60.0) == []
    assert void_remarks(None) == void_remarks(0.02) == []
    assert card_remarks([ClothWeight("linen", 200.0, 203.0)]) == []


def test_words_name_what_is_off_and_by_how_much():
    heavy, share, spilt = mass_remarks(100.0, 120.0, 0.5, 0.6, 9.0, 60.0)
    assert "20% heavier" in heavy
    assert "60% resin where 50%" in share
    assert spilt.startswith("9 g of the mix")
    assert "10% of air" in void_remarks(0.1)[0]
    assert "is wrong" in void_remarks(-0.1)[0]
    assert (
        "210 g/m^2 where its card says 200" in card_remarks([ClothWeight("linen", 200.0, 210.0)])[0]
    )
