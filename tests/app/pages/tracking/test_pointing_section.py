"""Stars pointed at: typed, read from a file, invented."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.pages.tracking.page import (
    POINTING,
)
from core.sky.site import Air, Site

from .conftest import written

HILL, AIR = Site(48.1, 11.6, 520.0, "Hill"), Air(952.0, 10.0)


def test_stars_typed_by_hand_are_kept_and_can_be_removed(page, wait, session, log) -> None:
    section = page.show_section(POINTING)
    with pytest.raises(AssertionError):
        assert section.bench.here() is not None
    session.set_site(HILL, AIR)
    for name, dec in (("one", "+10"), ("two", "+40"), ("three", "+70")):
        texts = {
            "name": name,
            "ra": "18 00 00",
            "dec": dec,
            "mount_ra": "18 01 20",
            "mount_dec": dec,
            "utc": "2026-09-21 20:00",
        }
        for field, text in texts.items():
            section.form.fields[field].show_text(text)
        wait(lambda: QTest.keyClick(section.form.fields["ra"].line(), Qt.Key.Key_Return))
    assert section.stars.count() == 3
    assert len(log.settings["tracking stars"]) == 3
    assert "3 stars" in section.sentence.text()
    wait(section.remove_key.click)
    assert section.stars.count() == 2
    assert "too few" in section.sentence.text()


def test_a_coordinate_that_cannot_be_read_is_named_at_its_line(page, session) -> None:
    section = page.show_section(POINTING)
    session.set_site(HILL, AIR)
    section.form.fields["ra"].show_text("north")
    section.form.submit()
    assert section.form.fields["ra"].is_wrong()
    assert page.bench.sightings == ()


def test_without_a_site_stars_ask_for_it(page, qtbot) -> None:
    section = page.show_section(POINTING)
    with qtbot.waitSignal(page.site_wanted):
        section.form.add_key.click()


def test_practice_stars_name_the_largest_part_first(page, wait, log) -> None:
    section = page.show_section(POINTING)
    wait(section.practice_key.click)
    first = section.terms.text().splitlines()[0]
    assert "hour angle" in first  # 14′ in the invented mount, its largest
    assert "tracking stars" not in log.settings


def test_a_list_of_stars_from_a_file(page, wait, session, tmp_path) -> None:
    session.set_site(HILL, AIR)
    section = page.show_section(POINTING)
    rows = ["utc,mount_ra_deg,mount_dec_deg,star_ra_deg,star_dec_deg,side"]
    rows += [f"2026-09-21T20:00:00Z,{ra},{dec},270,{dec},east" for ra, dec in ((270.2, 10),) * 3]
    rows.insert(2, "yesterday,1,2,3,4,east")
    wait(lambda: section.read(written(tmp_path, "\n".join(rows))))
    assert section.stars.count() == 3
    assert "Line 3" in section.said()
