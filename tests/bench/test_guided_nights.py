"""How fast the guided procedure reaches 1′, beside the classical method on the same nights."""

import numpy as np
import pytest

from tests.bench.simulated_nights import TARGET_ARCMIN, classical, floor_minutes, guided

pytestmark = pytest.mark.bench
SEEDS = range(1, 81)


def summary(name, nights):
    reached = np.array(
        [np.inf if n.first_within_min is None else n.first_within_min for n in nights]
    )
    total = np.array([night.watched_min for night in nights])
    within = np.mean([night.sky_error_arcmin < TARGET_ARCMIN for night in nights])
    wrong = sum(night.wrong_ways for night in nights)
    turns = 2 * sum(night.turns for night in nights)
    print(
        f"{name}: within {TARGET_ARCMIN:g}′ after {np.median(reached):.1f} min (median), "
        f"{np.percentile(reached, 95, method='lower'):.1f} min (95 %); ends after {np.median(total):.1f} min, "
        f"within then {within:.0%}; wrong way {wrong} of {turns}"
    )
    return float(np.median(reached)), float(np.percentile(reached, 95, method="lower")), wrong


def test_the_guided_procedure_beats_the_classical_method():
    steered = [guided(seed, steered=True) for seed in SEEDS]
    blind = [guided(seed, steered=False) for seed in SEEDS]
    by_hand = [classical(seed) for seed in SEEDS]
    median, late, _ = summary("guided, star in view while turning", steered)
    blind_median, _, _ = summary("guided, turning blind", blind)
    classical_median, _, _ = summary("classical", by_hand)
    floors = [floor_minutes(chance) for chance in (0.5, 0.95)]
    print(f"Cramér-Rao floor: {floors[0]:.1f} min (even chance), {floors[1]:.1f} min (95 %)")
    assert median <= 8.0
    assert late <= 12.0
    assert classical_median >= 4.0 * median
    assert blind_median < classical_median
