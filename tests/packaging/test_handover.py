"""The option of the start itself, and how troubles are worded."""

import errno

import pytest

from firstrun.handover import in_words, take_wheels
from firstrun.trouble import Trouble


@pytest.fixture
def stick(tmp_path):
    (tmp_path / "x-1-py3-none-any.whl").touch()
    return tmp_path


@pytest.mark.parametrize(("before", "after"), [([], []), (["night.csv"], ["--speed", "60"])])
def test_its_own_option_is_taken_and_the_rest_passed_on(stick, before, after):
    assert take_wheels([*before, "--wheels", str(stick), *after]) == (stick, before + after)
    assert take_wheels([*before, f"--wheels={stick}", *after]) == (stick, before + after)


def test_without_the_option_everything_is_passed_on():
    assert take_wheels(["-k", "name", "--wheel"]) == (None, ["-k", "name", "--wheel"])


@pytest.mark.parametrize("arguments", [["--wheels"], ["--wheels="], ["--wheels", "nowhere"]])
def test_a_folder_without_wheels_is_refused(arguments):
    with pytest.raises(Trouble, match=r"\*\.whl"):
        take_wheels(arguments)


@pytest.mark.parametrize(
    ("fault", "code", "said"),
    [
        (Trouble("do this"), 1, "do this"),
        (OSError(errno.ENOSPC, "No space left on device", "/place"), 1, "/place: No space left"),
        (KeyboardInterrupt(), 130, "next start"),
    ],
)
def test_no_traceback_reaches_the_person(fault, code, said, capsys):
    def job() -> int:
        raise fault

    assert in_words(job) == code
    error = capsys.readouterr().err
    assert said in error
    assert "Traceback" not in error


def test_the_exit_code_of_the_job_is_kept():
    assert in_words(lambda: 3) == 3
