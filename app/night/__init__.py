"""The owner of tonight: plan, legs, axis states, procedure; takes events, gives snapshots out."""
