//! The two byte streams, each on a thread of its own, and the library's ends of them.

use std::io::{self, Read, Write};
use std::pin::Pin;
use std::sync::Arc;
use std::sync::mpsc as std_mpsc;
use std::task::{Context, Poll};

use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::sync::mpsc;

use crate::dispatch::Dispatcher;
use crate::frames::Frames;
use crate::session::Session;
use crate::sink::Sink;

/// Frames sent to the library and not yet read by it.
const AHEAD: usize = 64;

/// The library's input: the messages that the dispatcher sends it.
pub(crate) struct Incoming {
    frames: mpsc::Receiver<Vec<u8>>,
    now: Vec<u8>,
    at: usize,
}

impl Incoming {
    pub(crate) fn new() -> (mpsc::Sender<Vec<u8>>, Incoming) {
        let (send, frames) = mpsc::channel(AHEAD);
        let incoming = Incoming {
            frames,
            now: Vec::new(),
            at: 0,
        };
        (send, incoming)
    }
}

/// Starts reading. The thread ends with its input, with the library, or with the process.
pub(crate) fn read_all(read: impl Read + Send + 'static, dispatcher: Dispatcher) -> io::Result<()> {
    std::thread::Builder::new()
        .name("read".to_owned())
        .spawn(move || {
            let mut source = Frames::new(read);
            while let Some(message) = source.next() {
                if !dispatcher.begin(message) {
                    break;
                }
            }
        })
        .map(drop)
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

/// The library's output.
pub(crate) struct Outgoing(Sink);

/// Starts writing. The receiver disconnects when the writing thread has ended.
pub(crate) fn write_all(
    write: impl Write + Send + 'static,
    sink: Sink,
    session: Arc<Session>,
) -> io::Result<(Outgoing, std_mpsc::Receiver<()>)> {
    let queue = sink.clone();
    let (done, finished) = std_mpsc::channel();
    std::thread::Builder::new()
        .name("write".to_owned())
        .spawn(move || {
            if !queue.drain(write) {
                // the client has stopped reading
                session.end();
            }
            drop(done);
        })?;
    Ok((Outgoing(sink), finished))
}

impl AsyncWrite for Outgoing {
    fn poll_write(
        self: Pin<&mut Self>,
        _: &mut Context<'_>,
        chunk: &[u8],
    ) -> Poll<io::Result<usize>> {
        Poll::Ready(match self.0.push(chunk.to_vec()) {
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
