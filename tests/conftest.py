"""Property tests fail on results, never on seconds, and CI always tries the same cases."""

import os

from hypothesis import settings

settings.register_profile(
    "laywright", deadline=None, derandomize="CI" in os.environ, print_blob=True
)
settings.load_profile("laywright")
