"""Property tests fail on results, never on seconds, and CI always tries the same cases.

Tests inside FreeCAD may leave files for a person to look at.
"""

import os
from pathlib import Path

import pytest
from hypothesis import settings

settings.register_profile(
    "laywright", deadline=None, derandomize="CI" in os.environ, print_blob=True
)
settings.load_profile("laywright")


@pytest.fixture
def artefacts(tmp_path):
    """Return the folder for pictures and files that a person may want to look at."""
    folder = os.environ.get("LAYWRIGHT_RESULTS")
    return Path(folder) if folder else tmp_path
