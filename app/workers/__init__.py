"""Work beside the window's thread, clocks, tones, a screen that stays on."""
