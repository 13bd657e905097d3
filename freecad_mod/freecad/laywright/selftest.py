"""A short test that FreeCAD can run itself: the workbench is there and the core computes."""

import unittest

__all__ = ["CoreIsThere"]


class CoreIsThere(unittest.TestCase):
    """Run with ``freecadcmd -t freecad.laywright.selftest``."""

    def test_every_package_is_there(self):
        from freecad.laywright import packages

        self.assertEqual(packages.missing(), [])

    def test_a_laminate_is_computed(self):
        from laywright.laminate.laminate import analyse
        from laywright.laminate.materials import load_materials
        from laywright.laminate.plies import Layup, Ply

        materials = load_materials()
        cloth = materials.cloth("E-glass twill weave 200 g/m^2")
        resin = materials.resin("Laminating epoxy, slow hardener")
        laminate = analyse(Layup((Ply(cloth, 0.0), Ply(cloth, 0.0)), resin))
        self.assertAlmostEqual(laminate.areal_mass, 800.0)
