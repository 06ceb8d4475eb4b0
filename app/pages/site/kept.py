"""The places kept in the log of nights: one press goes back to one of them."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from app.session.places import Place
from app.widgets.asking import Asking
from app.widgets.flow import Flow
from app.widgets.key import Key
from app.widgets.text import Text


class KeptPlaces(QWidget):
    """`chosen` carries a Place, `forget` its label, after a yes. Hidden while nothing is kept."""

    chosen = Signal(object)
    forget = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._keys: dict[str, Key] = {}
        self._in_use = ""
        self._holder = QWidget()
        self._flow = Flow(self._holder)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self._holder.setSizePolicy(policy)
        self._forget = Key(self.tr("Forget this place"))
        self._forget.clicked.connect(self._ask)
        self._asking = Asking()
        self._asking.answered.connect(self._answered)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Text(self.tr("Places kept"), "small"))
        column.addWidget(self._holder)
        column.addWidget(self._asking)
        self._flow.addWidget(self._forget)
        self.hide()

    def show_places(self, places: Sequence[Place], in_use: str) -> None:
        """`in_use`: the label of the place in use, empty when there is none."""
        self._in_use = in_use
        for key in self._keys.values():
            self._flow.removeWidget(key)
            key.deleteLater()
        self._flow.removeWidget(self._forget)
        self._keys = {place.label: self._key(place) for place in places}
        self._flow.addWidget(self._forget)
        self._forget.setVisible(in_use in self._keys)
        self.setVisible(bool(places))

    def button(self, label: str) -> Key:
        return self._keys[label]

    def forget_button(self) -> Key:
        return self._forget

    def asking(self) -> Asking:
        return self._asking

    def _key(self, place: Place) -> Key:
        key = Key(place.label)
        key.setCheckable(True)
        key.setChecked(place.label == self._in_use)
        key.setAccessibleName(self.tr("Use {place}").format(place=place.label))
        key.clicked.connect(lambda: self._choose(place))
        self._flow.addWidget(key)
        return key

    def _choose(self, place: Place) -> None:
        self._keys[place.label].setChecked(place.label == self._in_use)
        self.chosen.emit(place)

    def _ask(self) -> None:
        question = self.tr("Forget “{place}”, with its time zone and horizon?")
        self._asking.ask(
            question.format(place=self._in_use), self.tr("Yes, forget it"), self.tr("No, keep it")
        )
        self._asking.no().setFocus()

    def _answered(self, is_yes: bool) -> None:
        if is_yes:
            self.forget.emit(self._in_use)
        else:
            self._forget.setFocus()
