"""How good is good enough: the smear an axis error leaves on tonight's exposures.

The stars of the field are seen through the air from the turning Earth, the mount turns about its
displaced axis, and the trail on the sensor is what remains: `task` says what is taken, `field`
where its stars are seen, `trail` what the sensor catches, `watched` from which guide star it is
worst and `passage` why that is near the pole. From these follow the largest error
(`tolerance`), the verdict on the alignment (`verdict`), the curve against exposure (`curve`), the
map (`skymap`) and the aim that serves a target best (`aim`). Periodic error, seeing, flexure and
wind are not in it.
"""

from core.alignment.budget.aim import BestAim, best_aim
from core.alignment.budget.alignment import Alignment
from core.alignment.budget.curve import Curve, LongestExposure, longest_exposure, smear_curve
from core.alignment.budget.skymap import SkyMap, sky_map
from core.alignment.budget.task import Optics, Target, Task, UnusableTask, Vantage
from core.alignment.budget.tolerance import Tolerance, tolerance
from core.alignment.budget.verdict import Grade, Share, Smear, judge

__all__ = [
    "Alignment",
    "BestAim",
    "Curve",
    "Grade",
    "LongestExposure",
    "Optics",
    "Share",
    "SkyMap",
    "Smear",
    "Target",
    "Task",
    "Tolerance",
    "UnusableTask",
    "Vantage",
    "best_aim",
    "judge",
    "longest_exposure",
    "sky_map",
    "smear_curve",
    "tolerance",
]
