"""From a moulded face to printed tiles: release, body, cuts, joints."""
