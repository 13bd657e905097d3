"""How a part leaves its mould: draft, undercut, pulls, and parting where one is not enough."""
