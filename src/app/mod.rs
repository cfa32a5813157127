//! The page.
