"""The Mount page before anything is entered: what it is for, and the first step."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from app.pages.mount.choosing import ChoosingSection
from app.pages.mount.equipment import Things
from app.pages.mount.image import ImageSection
from app.pages.mount.load import LoadSection
from app.ui.beam import Beam, BeamDrawing, BeamMass
from app.ui.form import Choice, Key, OptionKeys
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Scrolled, Text
from core.mount.examples import invented_inventory

if TYPE_CHECKING:
    from app.night.budget import Budget
    from app.night.equipment import Equipment
    from app.night.session import Session


# Masses and arms of a made-up load in balance, for the drawing alone.
TUBE, CAMERA, WEIGHT = (6.0, 240.0), (1.0, 360.0), (6.5, -277.0)


class Start(QWidget):
    """`example_wanted`: the invented set; `own_wanted`: a form for one's own mount."""

    example_wanted = Signal()
    own_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.example_key = Key(self.tr("Try an invented set"), "primary")
        self.own_key = Key(self.tr("Enter your mount"))
        self.example_key.clicked.connect(self.example_wanted)
        self.own_key.clicked.connect(self.own_wanted)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(12)
        column.addWidget(
            Text(self.tr("Does the mount carry it, and which one to buy?"), "question")
        )
        column.addWidget(
            Text(
                self.tr(
                    "Type what the data sheets say of your mount and of what goes on it. This page "
                    "weighs the load, places the counterweight, tells what one pixel sees, and "
                    "compares mounts for what you want to do. It knows no products: the figures "
                    "are yours."
                )
            )
        )
        own = self.tr("Its capacity is enough for a start; the rest can follow.")
        example = self.tr("A made-up mount with a telescope, cameras and a weight, to look around.")
        ways = [self._way(self.example_key, example), self._way(self.own_key, own)]
        column.addWidget(Reflow(ways, 640))
        drawing = BeamDrawing(theme, self.tr("A telescope and a counterweight in balance"))
        drawing.show_beam(
            Beam(
                (
                    BeamMass(self.tr("tube"), *TUBE),
                    BeamMass(self.tr("camera"), *CAMERA),
                    BeamMass(self.tr("weight"), *WEIGHT, is_weight=True),
                ),
                self.tr("polar axis"),
                self.tr("counterweight"),
                self.tr("telescope"),
                rail_mm=(-380.0, -90.0),
                are_named=True,
                told=self.tr("A drawing: the weight on the left holds the load on the right."),
            )
        )
        drawing.setMaximumWidth(760)
        column.addWidget(drawing)
        column.addStretch(1)

    def _way(self, key: Key, sentence: str) -> Panel:
        panel = Panel()
        key.setAccessibleDescription(sentence)
        panel.column.addWidget(key)
        panel.column.addWidget(Text(sentence, "quiet"))
        panel.column.addStretch()
        return panel


# The Mount page: does the mount carry it, and which one to buy?

EQUIPMENT, LOAD, IMAGE, CHOOSING = "equipment", "load", "image", "choosing"


class MountPage(QWidget):
    """One section at a time; each is built when it is first looked at."""

    def __init__(
        self,
        session: Session,
        theme: Theme,
        equipment: Equipment,
        budget: Budget,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._session = session
        self._theme = theme
        self._equipment = equipment
        self._budget = budget
        self._built: dict[str, QWidget] = {}
        self._start = Start(theme)
        self.sections = Choice(self.tr("Section"), self._section_words())
        self.sets = OptionKeys(self.tr("Set in use"), is_beside=True)
        self._head = QWidget()
        self._stack = QStackedWidget()
        self._beginning = Scrolled(self._start)
        self._is_begun = False
        self._arrange()
        self.sections.chosen.connect(self.show_section)
        self.sets.chosen.connect(equipment.use)
        self._start.example_wanted.connect(self._take_example)
        self._start.own_wanted.connect(self._enter_own)
        equipment.changed.connect(self._show)
        session.changed.connect(lambda _snapshot: self._mark_image())
        self._show()
        if self._is_begun:
            self.show_section(EQUIPMENT)

    def _section_words(self) -> list[tuple[str, str]]:
        return [
            (EQUIPMENT, self.tr("Equipment")),
            (LOAD, self.tr("Load and balance")),
            (IMAGE, self.tr("Image")),
            (CHOOSING, self.tr("Which mount?")),
        ]

    def _arrange(self) -> None:
        head = QVBoxLayout(self._head)
        head.setContentsMargins(16, 12, 16, 0)
        head.addWidget(Reflow((self.sections, self.sets), 900, (1, 1)))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addWidget(self._head)
        column.addWidget(self._beginning, 1)
        column.addWidget(self._stack, 1)

    def start(self) -> Start:
        return self._start

    def equipment(self) -> Equipment:
        return self._equipment

    def section(self, name: str) -> QWidget:
        """Builds it when it is first asked for."""
        if name not in self._built:
            self._built[name] = self._build(name)
            self._stack.addWidget(self._built[name])
        return self._built[name]

    def show_section(self, name: str) -> None:
        """One of "equipment", "load", "image" and "choosing"."""
        self._is_begun = True
        self.sections.show_choice(name)
        self._stack.setCurrentWidget(self.section(name))
        self._show()

    def stop(self) -> None:
        """Waits for what is under way beside the window; harmless twice."""
        for section in self._built.values():
            if isinstance(section, Things):
                section.exchange.close_errands()
            if isinstance(section, ImageSection):
                section.close_errands()

    def _build(self, name: str) -> QWidget:
        theme, equipment = self._theme, self._equipment
        makers: dict[str, Callable[[], QWidget]] = {
            EQUIPMENT: lambda: Things(theme, equipment),
            LOAD: lambda: LoadSection(theme, equipment),
            IMAGE: lambda: ImageSection(theme, equipment, self._budget, self._session),
            CHOOSING: lambda: ChoosingSection(theme, equipment),
        }
        return makers[name]()

    def _mark_image(self) -> None:
        image = self._built.get(IMAGE)
        if isinstance(image, ImageSection):
            image.mark()

    def _show(self) -> None:
        inventory = self._equipment.inventory
        self._is_begun = self._is_begun or bool(inventory.things())
        self._beginning.setVisible(not self._is_begun)
        for part in (self._head, self._stack):
            part.setVisible(self._is_begun)
        chosen = self._equipment.set_in_use()
        options = [(one.key, one.name) for one in inventory.sets]
        self.sets.offer(options, "" if chosen is None else chosen.key)
        self.sets.setVisible(bool(options))
        self.setFocusProxy(self._focus())

    def _focus(self) -> QWidget:
        if not self._is_begun:
            return self._start.example_key
        return self.sections.button(self.sections.choice() or EQUIPMENT)

    def _take_example(self) -> None:
        self._equipment.take(invented_inventory())
        self.show_section(LOAD)
        self.sections.button(LOAD).setFocus()

    def _enter_own(self) -> None:
        self.show_section(EQUIPMENT)
        things = self.section(EQUIPMENT)
        assert isinstance(things, Things)
        things.add("mount")
