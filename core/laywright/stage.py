"""A stage of the job: a pure function whose result knows which inputs made it.

Write a stage as a plain function that takes values and gives a frozen dataclass with a field
``digest: str = ""``; the decorator does the rest::

    @stage("Roll Plan", version=1)
    def plan_roll(patterns: PatternSet, roll: Roll, *, progress: Progress = silent) -> RollPlan:
        ...

    plan = plan_roll(patterns, roll)
    plan.digest == plan_roll.digest(patterns, roll)     # up to date?

The version is raised when the method changes so that stored results count as out of date.
"""

from __future__ import annotations

import dataclasses
import functools
import inspect
from collections.abc import Callable
from typing import Any, Generic, ParamSpec, TypeVar

from laywright import values

__all__ = ["Stage", "stage"]

P = ParamSpec("P")
R = TypeVar("R")


class Stage(Generic[P, R]):
    """A stage: call it for its result, ask it for the digest of given inputs.

    Attributes
    ----------
    title : str
        What people call the stage, for example ``"Roll Plan"``.
    version : int
        Version of the method.
    """

    def __init__(self, function: Callable[P, R], title: str, version: int) -> None:
        functools.update_wrapper(self, function)
        self.title = title
        self.version = version
        self._function = function
        self._signature = inspect.signature(function)

    def __call__(self, *args: P.args, **kwargs: P.kwargs) -> R:
        """Compute the result and stamp it with the digest of its inputs."""
        result: Any = self._function(*args, **kwargs)
        stamped: R = dataclasses.replace(result, digest=self.digest(*args, **kwargs))
        return stamped

    def renew(self, previous: R | None, *args: P.args, **kwargs: P.kwargs) -> R:
        """Return `previous` if these inputs made it; compute the result otherwise."""
        if previous is not None and getattr(previous, "digest", "") == self.digest(*args, **kwargs):
            return previous
        return self(*args, **kwargs)

    def digest(self, *args: P.args, **kwargs: P.kwargs) -> str:
        """Return the digest of these inputs; progress is not an input."""
        bound = self._signature.bind(*args, **kwargs)
        bound.apply_defaults()
        inputs = [value for name, value in bound.arguments.items() if name != "progress"]
        return values.digest(self.title, self.version, *inputs)


def stage(title: str, version: int) -> Callable[[Callable[P, R]], Stage[P, R]]:
    """Make a function a `Stage`; its result must be a dataclass with a ``digest`` field."""

    def decorate(function: Callable[P, R]) -> Stage[P, R]:
        return Stage(function, title, version)

    return decorate
