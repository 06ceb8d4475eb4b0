"""The band that leads through the night: stage, sentence, and keys with their letters."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from app.pages.drift.guidance import Action, Guidance
from app.widgets.flow import Flow
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from core.language import say

BESIDE_PX = 520  # from here on the keys stand beside the words


class GuideBand(Panel):
    """`pressed` carries the name of an action."""

    pressed = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("What to do next"))
        self._guidance: Guidance | None = None
        self._actions: tuple[Action, ...] = ()
        self._buttons: dict[str, Key] = {}
        self._stage = Text("", "quiet")
        self._sentence = Text("", "title")
        self._detail = Text("", "quiet")
        self._warning = Text("", "alarm")
        self._keys = QWidget()
        self._row = Flow(self._keys, gap_px=6)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self._keys.setSizePolicy(policy)
        self._arrange()

    def _arrange(self) -> None:
        words = QWidget()
        lines = QVBoxLayout(words)
        lines.setContentsMargins(0, 0, 0, 0)
        lines.setSpacing(2)
        for part in (self._stage, self._sentence, self._detail, self._warning):
            lines.addWidget(part)
        lines.addStretch()
        self.column.setContentsMargins(16, 8, 12, 8)
        self.column.addWidget(Reflow((words, self._keys), BESIDE_PX))

    def show_guidance(self, guidance: Guidance) -> None:
        if guidance == self._guidance:
            return
        self._guidance = guidance
        self._stage.say(guidance.stage)
        self._sentence.say(guidance.sentence)
        self._detail.say(guidance.detail)
        self._warning.say("\n".join(guidance.warnings))
        self.setAccessibleDescription(f"{guidance.stage}. {guidance.sentence}")
        actions = tuple(
            action for action in (guidance.primary, *guidance.others) if action is not None
        )
        self._show_keys(actions, guidance.primary)

    def guidance(self) -> Guidance | None:
        return self._guidance

    def button(self, name: str) -> Key | None:
        return self._buttons.get(name)

    def press_letter(self, letter: str) -> bool:
        """For keys pressed while a number is being typed. Whether it meant anything."""
        for action in self._actions:
            if action.letter and action.letter == letter.upper():
                self.pressed.emit(action.name)
                return True
        return False

    def _show_keys(self, actions: tuple[Action, ...], primary: Action | None) -> None:
        """Kept while they stay the same, so that no key vanishes under a finger or the focus."""
        wanted = (*actions, primary) if primary is not None else actions
        if wanted == self._actions:
            return
        self._actions = wanted
        had_focus = any(button.hasFocus() for button in self._buttons.values())
        for button in self._buttons.values():
            self._row.removeWidget(button)
            button.setShortcut("")
            button.hide()
            button.deleteLater()
        self._buttons = {action.name: self._key(action, action is primary) for action in actions}
        if had_focus and actions:
            self._buttons[actions[0].name].setFocus()
        self._keys.updateGeometry()

    def _key(self, action: Action, is_primary: bool) -> Key:
        words = say(action.words)
        if action.letter:
            words = self.tr("{words} ({letter})").format(words=words, letter=action.letter)
        key = Key(words, "primary" if is_primary else "")
        key.setShortcut(action.letter)
        key.clicked.connect(lambda: self.pressed.emit(action.name))
        self._row.addWidget(key)
        key.show()
        return key
