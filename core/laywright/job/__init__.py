"""The whole job as one value; running it gives one result, and the result gives files."""

from __future__ import annotations

from laywright.job.job import Job, JobResult, run
from laywright.job.outputs import files_of, freshness, write_files

__all__ = ["Job", "JobResult", "files_of", "freshness", "run", "write_files"]
