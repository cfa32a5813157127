//! Parts of the program that are fetched when they are first looked at: what stands behind a
//! `wasm_split` function is cut from the program by the build (`.tools/bin/wasm-bindgen`).

use std::future::Future;
use std::pin::pin;
use std::task::{Context, Poll, Waker};

use leptos::prelude::*;
pub use wasm_split_helpers::SplitLoaderError as Missing;

use super::dom::{Node, action, el, live, several};
use crate::app::words;

/// How far a part has come.
#[derive(Clone, Copy, PartialEq)]
enum Fetched {
    /// It is on its way.
    Asked,
    /// It is here.
    Here,
    /// It could not be had.
    Missing,
}

/// The view of a part. `fetch` brings the part; `view` is its entry, which answers at once when the
/// part is here; `arrived` is done once it stands on the page.
pub fn part<F, V>(
    fetch: impl Fn() -> F + Copy + 'static,
    view: impl Fn() -> V + 'static,
    arrived: fn(),
) -> Node
where
    F: Future<Output = Result<(), Missing>> + 'static,
    V: Future<Output = Result<Node, Missing>>,
{
    let state = RwSignal::new(Fetched::Asked);
    let ask = move || {
        let mut coming = Box::pin(fetch());
        let here = move |came: bool| {
            // The view that asked may be gone.
            let _ = state.try_set(if came {
                Fetched::Here
            } else {
                Fetched::Missing
            });
        };
        // Nothing flickers where the part is here already.
        match coming
            .as_mut()
            .poll(&mut Context::from_waker(Waker::noop()))
        {
            Poll::Ready(came) => here(came.is_ok()),
            Poll::Pending => {
                state.set(Fetched::Asked);
                leptos::task::spawn_local(async move {
                    let came = coming.await.is_ok();
                    here(came);
                    if came {
                        super::soon(arrived);
                    }
                });
            }
        }
    };
    ask();
    live(move || match state.get() {
        Fetched::Asked => el("p")
            .class("hint waiting")
            .attr("role", "status")
            .child(words::fetching()),
        Fetched::Here => at_once(view()).unwrap_or_default(),
        Fetched::Missing => several()
            .child(el("p").attr("role", "alert").child(words::not_fetched()))
            .child(action("quiet", words::fetch_again(), ask)),
    })
}

/// What a future comes to that has nothing to wait for.
fn at_once<V: Future<Output = Result<Node, Missing>>>(view: V) -> Option<Node> {
    match pin!(view).poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(Ok(node)) => Some(node),
        _ => None,
    }
}
