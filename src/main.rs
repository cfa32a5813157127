//! The page's binary: mounts it, nothing more.
#![forbid(unsafe_code)]

fn main() {
    slackwater::app::mount();
}
