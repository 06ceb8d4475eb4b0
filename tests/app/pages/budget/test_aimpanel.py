"""The best aim for the target can be chosen, not only read."""

from app.pages.budget.sections import AimPanel
from core.alignment.goal import Aim
from core.imaging.tolerance import BestAim


def test_the_best_aim_can_be_chosen(qtbot):
    panel = AimPanel()
    qtbot.addWidget(panel)
    panel.show_aim(BestAim(0.55, 0.4, 0.2, 0.3, 0.25, "Best halfway."), Aim.TRUE_POLE)
    assert panel.aims.choice() == Aim.TRUE_POLE.name
    with qtbot.waitSignal(panel.aim_chosen) as said:
        panel.aims.button("between").click()
    assert said.args == [Aim.HALFWAY]
