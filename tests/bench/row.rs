//! Ours and a peer in turn → one row of the table.

use serde_json::Value;

use crate::bench::Outcome;
use crate::peer::{Found, Lacking};
use crate::times::Times;

/// Runs that count, after one of each that warms up.
const RUNS: usize = 7;

/// One row of the table.
pub struct Row {
    pub job: String,
    pub ours: Times,
    pub beside: Beside,
    /// What has to be known to compare the two.
    pub note: String,
}

/// What stands beside our time.
pub enum Beside {
    Timed { peer: String, times: Times },
    Lacking(Lacking),
    NoneExists,
}

impl Row {
    /// Ours and the peer in turn, so that whatever else the machine does meets both alike. `agree`
    /// looks at what the peer made: figures of different work are not compared.
    pub fn beside(
        job: impl Into<String>,
        mut ours: impl FnMut() -> Outcome<f64>,
        found: Found,
        agree: impl Fn(&Value) -> Outcome<()>,
    ) -> Outcome<Row> {
        let mut peer = match found {
            Ok(peer) => peer,
            Err(lacking) => {
                let row = Row::alone(job, ours)?;
                let beside = Beside::Lacking(lacking);
                return Ok(Row { beside, ..row });
            }
        };
        let (mut our_s, mut peer_s) = (Vec::new(), Vec::new());
        for run in 0..=RUNS {
            let our_run_s = ours()?;
            let (peer_run_s, made) = peer.run()?;
            agree(&made)?;
            if run > 0 {
                our_s.push(our_run_s);
                peer_s.push(peer_run_s);
            }
        }
        Ok(Row {
            job: job.into(),
            ours: Times::of(our_s),
            beside: Beside::Timed {
                peer: peer.name,
                times: Times::of(peer_s),
            },
            note: String::new(),
        })
    }

    /// Ours where no peer exists.
    pub fn alone(job: impl Into<String>, mut ours: impl FnMut() -> Outcome<f64>) -> Outcome<Row> {
        ours()?;
        let seconds: Outcome<Vec<f64>> = (0..RUNS).map(|_| ours()).collect();
        Ok(Row {
            job: job.into(),
            ours: Times::of(seconds?),
            beside: Beside::NoneExists,
            note: String::new(),
        })
    }

    pub fn noted(mut self, note: impl Into<String>) -> Row {
        self.note = note.into();
        self
    }
}
