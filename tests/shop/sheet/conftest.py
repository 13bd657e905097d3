"""One job sheet for the tests of its stations."""

import pytest

from job_sheet_demo import inputs
from laywright.shop.sheet.traveller import make_sheet


@pytest.fixture(scope="session")
def made():
    """Return the sheet of the small job."""
    return make_sheet(**inputs())
