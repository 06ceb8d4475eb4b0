"""The figures the Tracking page asks for, kept at every change."""

from __future__ import annotations

from dataclasses import asdict, dataclass, fields, replace
from typing import Any

from core.language import marked
from core.mount.equipment import Quantity

KEY = "tracking figures"
VERSION = 1

SCALE = Quantity(marked("The image scale"), marked(" ″/px"), 0.01, 1000.0)
ALLOWED = Quantity(marked("Smear allowed"), marked(" px"), 0.01, 100.0)
GUIDED_ALLOWED = Quantity(marked("Smear allowed when guided"), marked(" px"), 0.01, 100.0)
EXPOSURE = Quantity(marked("The exposure"), marked(" s"), 0.1, 21_600.0)
DECLINATION = Quantity(marked("The target's declination"), "°", -89.0, 89.0)
SEEING = Quantity(marked("The seeing"), " ″", 0.1, 60.0)
WORM = Quantity(marked("One turn of the worm"), marked(" s"), 0.5, 7200.0)
SHEET = Quantity(marked("Periodic error, peak to peak"), " ″", 0.1, 1000.0)
INTERVAL = Quantity(marked("A guide correction every"), marked(" s"), 0.05, 600.0)
DELAY = Quantity(marked("Delay of the correction"), marked(" s"), 0.0, 600.0)
SHARE = Quantity(marked("Share corrected each time"), " %", 1.0, 199.0)
NOISE = Quantity(marked("Error of one guide measurement"), " ″", 0.0, 20.0)
RATE = Quantity(marked("The guide rate"), marked(" ″/s"), 0.01, 200.0)
DITHER = Quantity(marked("Dither, after the first reading"), marked(" s"), 0.0, 86_400.0)
SETTLED = Quantity(marked("Settled within"), " ″", 0.01, 100.0)
CENTRING = Quantity(marked("A star is centred within"), " ′", 0.01, 30.0)
PAYLOAD = Quantity(marked("Payload"), marked(" kg"), 0.0, 500.0)
CAPACITY = Quantity(marked("The capacity"), marked(" kg"), 0.1, 1000.0)


@dataclass(frozen=True)
class Figures:
    """None where nothing is typed. `sheet_is_plus_minus`: the data sheet gives half the size."""

    scale_arcsec_per_px: float | None = None
    allowed_px: float | None = None
    guided_allowed_px: float | None = None
    exposure_s: float | None = None
    declination_deg: float | None = None
    seeing_arcsec: float | None = None
    worm_period_s: float | None = None
    sheet_arcsec: float | None = None
    sheet_is_plus_minus: bool = False
    guide_interval_s: float | None = None
    guide_delay_s: float | None = None
    guide_share_percent: float | None = None
    guide_noise_arcsec: float | None = None
    guide_rate_arcsec_per_s: float | None = None
    dither_s: float | None = None
    settled_arcsec: float | None = None
    centring_arcmin: float | None = None
    payload_kg: float | None = None
    capacity_kg: float | None = None

    def over(self, usual: Figures) -> Figures:
        """What is typed here, and the usual where nothing is."""
        taken = {name: value for name, value in asdict(self).items() if value is not None}
        return replace(usual, **taken)

    def of_curves(self) -> tuple[float | None, ...]:
        """Those on which the chances of exposures depend."""
        return (
            *(self.scale_arcsec_per_px, self.allowed_px, self.guided_allowed_px),
            *(self.declination_deg, self.guide_interval_s, self.guide_delay_s),
            *(self.guide_share_percent, self.guide_noise_arcsec),
        )


# Common practice, no source, for what is not known better.
USUAL = Figures(
    allowed_px=0.5,
    guided_allowed_px=1.5,  # the air alone moves a guide star as far
    exposure_s=120.0,
    declination_deg=0.0,
    guide_interval_s=3.0,
    guide_delay_s=1.0,
    guide_share_percent=60.0,
    guide_noise_arcsec=0.3,
    guide_rate_arcsec_per_s=7.5,
    settled_arcsec=1.5,
    centring_arcmin=1.0,
)


def to_keep(figures: Figures) -> dict[str, Any]:
    """As a setting."""
    return {"version": VERSION, **asdict(figures)}


def from_kept(kept: Any) -> Figures:
    """Empty where what was kept cannot be used."""
    if not isinstance(kept, dict) or kept.get("version") != VERSION:
        return Figures()
    taken: dict[str, Any] = {}
    for one in fields(Figures):
        value = kept.get(one.name)
        if one.name == "sheet_is_plus_minus":
            taken[one.name] = value is True
        elif isinstance(value, int | float) and not isinstance(value, bool):
            taken[one.name] = float(value)
    return Figures(**taken)
