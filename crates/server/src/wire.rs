//! The two byte streams, each on a thread of its own, so that neither side waits for the other.

use std::io::{self, Read, Write};
use std::pin::Pin;
use std::sync::atomic::Ordering;
use std::sync::mpsc as std_mpsc;
use std::sync::{Arc, Mutex, PoisonError};
use std::task::{Context, Poll};

use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::sync::mpsc;

use crate::direct::{Direct, Ways};
use crate::frames::{Call, Frame, Frames};
use crate::guard::End;
use crate::raw::Raws;
use crate::sink::Sink;

/// Messages read and not yet taken.
const AHEAD: usize = 64;

/// What comes in, in frames that the library takes.
pub(crate) struct Incoming {
    frames: mpsc::Receiver<Vec<u8>>,
    now: Vec<u8>,
    at: usize,
}

/// Starts reading. The thread ends with its input, or with the process.
/// What is asked with every key is handed to `direct` while that is there.
pub(crate) fn incoming(
    read: impl Read + Send + 'static,
    ways: Arc<Ways>,
    direct: Arc<Mutex<Option<Direct>>>,
) -> io::Result<Incoming> {
    let (send, frames) = mpsc::channel(AHEAD);
    std::thread::Builder::new()
        .name("read".to_owned())
        .spawn(move || {
            let mut source = Frames::new(read);
            while let Some(Frame { body, call }) = source.next() {
                if let Some(Call::Sent { method, id }) = &call
                    && let Some(d) = &*direct.lock().unwrap_or_else(PoisonError::into_inner)
                    && d.take(method, id.as_ref(), &body)
                {
                    continue;
                }
                if call.is_some() {
                    ways.long.fetch_add(1, Ordering::SeqCst);
                }
                let mut frame = format!("Content-Length: {}\r\n\r\n", body.len()).into_bytes();
                frame.extend_from_slice(&body);
                if send.blocking_send(frame).is_err() {
                    break;
                }
            }
        })?;
    Ok(Incoming {
        frames,
        now: Vec::new(),
        at: 0,
    })
}

impl AsyncRead for Incoming {
    fn poll_read(
        mut self: Pin<&mut Self>,
        cx: &mut Context<'_>,
        out: &mut ReadBuf<'_>,
    ) -> Poll<io::Result<()>> {
        if self.at == self.now.len() {
            match self.frames.poll_recv(cx) {
                Poll::Pending => return Poll::Pending,
                Poll::Ready(None) => return Poll::Ready(Ok(())),
                Poll::Ready(Some(frame)) => {
                    self.now = frame;
                    self.at = 0;
                }
            }
        }
        let n = out.remaining().min(self.now.len() - self.at);
        out.put_slice(&self.now[self.at..self.at + n]);
        self.at += n;
        Poll::Ready(Ok(()))
    }
}

/// What goes out.
pub(crate) struct Outgoing {
    sink: Sink,
    raws: Arc<Raws>,
}

/// Starts writing. The receiver hears when all is written and the writer has gone.
pub(crate) fn outgoing(
    write: impl Write + Send + 'static,
    sink: Sink,
    end: Arc<End>,
    raws: Arc<Raws>,
) -> io::Result<(Outgoing, std_mpsc::Receiver<()>)> {
    let queue = sink.clone();
    let (done, finished) = std_mpsc::channel();
    std::thread::Builder::new()
        .name("write".to_owned())
        .spawn(move || {
            if !queue.drain(write) {
                // nobody reads any more
                end.end();
            }
            drop(done);
        })?;
    Ok((Outgoing { sink, raws }, finished))
}

impl AsyncWrite for Outgoing {
    fn poll_write(
        self: Pin<&mut Self>,
        _: &mut Context<'_>,
        chunk: &[u8],
    ) -> Poll<io::Result<usize>> {
        Poll::Ready(match self.sink.push(self.raws.fill(chunk)) {
            true => Ok(chunk.len()),
            false => Err(io::ErrorKind::BrokenPipe.into()),
        })
    }

    fn poll_flush(self: Pin<&mut Self>, _: &mut Context<'_>) -> Poll<io::Result<()>> {
        Poll::Ready(Ok(()))
    }

    fn poll_shutdown(self: Pin<&mut Self>, _: &mut Context<'_>) -> Poll<io::Result<()>> {
        Poll::Ready(Ok(()))
    }
}
