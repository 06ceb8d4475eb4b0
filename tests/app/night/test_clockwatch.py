"""A clock that jumps is noticed."""

import pytest

from app.workers.clocks import ClockWatch, steady_s

pytestmark = pytest.mark.usefixtures("qapp")


class Hands:
    """Two clocks moved by hand."""

    wall_s = 1_790_000_000.0
    steady_s = 50.0

    def pass_time(self, seconds: float, wall_step_s: float = 0.0) -> None:
        self.steady_s += seconds
        self.wall_s += seconds + wall_step_s


@pytest.fixture
def hands() -> Hands:
    return Hands()


@pytest.fixture
def watch(hands: Hands) -> ClockWatch:
    return ClockWatch(lambda: hands.wall_s, lambda: hands.steady_s)


@pytest.mark.parametrize(("step_s", "said"), [(3600.0, "forward by 60 min"), (-7.0, "back by 7 s")])
def test_a_jump_is_said_once(watch, hands, qtbot, step_s, said) -> None:
    hands.pass_time(1.0, step_s)
    with qtbot.waitSignal(watch.jumped) as jumped:
        watch.look()
    assert said in jumped.args[0]
    hands.pass_time(1.0)
    with qtbot.assertNotEmitted(watch.jumped):
        watch.look()


def test_sleep_and_slow_corrections_are_no_jumps(watch, hands, qtbot) -> None:
    with qtbot.assertNotEmitted(watch.jumped):
        hands.pass_time(8 * 3600.0)
        watch.look()
        for _ in range(20):
            hands.pass_time(1.0, 0.3)
            watch.look()


def test_the_steady_clock_goes_on() -> None:
    assert steady_s() <= steady_s()
