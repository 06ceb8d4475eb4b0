"""What reaches a person at the eyepiece: tones, spoken words, a screen that stays on."""
