"""The aim is chosen by three keys, the one between only where it means something."""

from app.ui.form import AimChoice
from core.alignment.goal import Aim


def test_either_pole_is_chosen(qtbot):
    choice = AimChoice("Aim", "Between them")
    qtbot.addWidget(choice)
    with qtbot.waitSignal(choice.aim_chosen) as said:
        choice.button(Aim.REFRACTED_POLE.name).click()
    assert said.args == [Aim.REFRACTED_POLE]
    assert not choice.button("between").isVisibleTo(choice)


def test_an_offered_aim_between_the_poles_can_be_chosen(qtbot):
    choice = AimChoice("Aim", "Best for this target")
    qtbot.addWidget(choice)
    choice.offer(Aim.nearest(0.4))
    with qtbot.waitSignal(choice.aim_chosen) as said:
        choice.button("between").click()
    assert said.args == [Aim.HALFWAY]
    choice.offer(Aim.nearest(0.95))
    assert not choice.button("between").isVisibleTo(choice)


def test_an_aim_in_force_between_the_poles_is_shown(qtbot):
    choice = AimChoice("Aim", "Between them")
    qtbot.addWidget(choice)
    choice.show_aim(Aim.QUARTER_UP)
    assert choice.choice() == "between"
