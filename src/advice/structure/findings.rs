//! Verdicts on boards, covers and frames, each with the changes of one field that mend it.
