//! The ways to say a set of rules as one tree: what several have in common at their start is tried once.
//!
//! From a node every edge that fits is followed; of all ends reached the farthest counts, of two alike
//! the one that stands first in the files. What the ways along the edges of a node can start with are
//! sets with numbers in a row, so that the edges worth following are found as a few bits at once.

use super::plain::Plain;
use super::program::{Maker, Op, SetId, Step, StepId, small};
use serde::{Deserialize, Serialize};

/// A tree of patterns.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Tree {
    /// The nodes; the root is the first.
    pub nodes: Vec<Node>,
    /// The edges, those of one node side by side.
    pub edges: Vec<Edge>,
    /// The rule and the alternative of each end, in the order of the files.
    pub ends: Vec<(usize, usize)>,
}

/// Stands for "no rule ends here", and for "no more edges".
pub const NONE: u32 = u32::MAX;

/// The most edges of a node: what their ways can start with are neighbouring bits of one number.
const MOST_EDGES: usize = u64::BITS as usize;

/// A place in the tree.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub struct Node {
    /// Where it goes on: the first of its edges in [`Tree::edges`].
    pub edges: u32,
    /// The set of what the way along the first edge can start with; those of the others follow.
    pub firsts: SetId,
    /// A bit for each edge, the first one lowest.
    pub all: u64,
    /// A node that holds the edges for which there was no room, or [`NONE`].
    pub more: u32,
    /// The first way to say a rule that ends here, by its place in [`Tree::ends`]; or [`NONE`].
    pub end: u32,
}

/// A step from one node to the next.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub struct Edge {
    /// What must stand in the note.
    pub step: Step,
    /// Whether every word that the rest of the way can start with opens the gate of the step.
    pub open: bool,
    /// The node behind it.
    pub to: u32,
}

/// A step, the ways on from it, and the node behind it.
type Branch = (StepId, Vec<Vec<Plain>>, usize);

/// A node while the tree grows.
#[derive(Default)]
struct Growing {
    edges: Vec<Branch>,
    end: Option<usize>,
}

impl Tree {
    /// The tree of these alternatives, given by their rule, their place in it, and their steps.
    pub(super) fn of(maker: &mut Maker, ways: &[(usize, usize, Vec<Plain>)]) -> Self {
        let mut growing = vec![Growing::default()];
        let mut out = Self::default();
        for (rule, index, items) in ways {
            let end = out.ends.len();
            out.ends.push((*rule, *index));
            let mut at = 0;
            for (i, item) in items.iter().enumerate() {
                let step = maker.step(item);
                let known = growing[at].edges.iter().position(|e| e.0 == step);
                let known = known.unwrap_or_else(|| {
                    let to = growing.len();
                    growing.push(Growing::default());
                    growing[at].edges.push((step, Vec::new(), to));
                    growing[at].edges.len() - 1
                });
                let edge = &mut growing[at].edges[known];
                edge.1.push(items[i..].to_vec());
                at = edge.2;
            }
            growing[at].end = growing[at].end.or(Some(end));
        }
        let mut next = growing.len();
        let mut extra = Vec::new();
        for node in growing {
            let chunks: Vec<&[Branch]> = node.edges.chunks(MOST_EDGES).collect();
            for (i, chunk) in chunks.iter().enumerate() {
                let last = i + 1 == chunks.len();
                let more = if last { NONE } else { small(next) };
                let end = node.end.filter(|_| i == 0).map_or(NONE, small);
                let made = out.add_edges(maker, chunk, more, end);
                if i == 0 {
                    out.nodes.push(made);
                } else {
                    extra.push(made);
                }
                next += usize::from(!last);
            }
            if chunks.is_empty() {
                let end = node.end.map_or(NONE, small);
                out.nodes.push(Node { edges: 0, firsts: 0, all: 0, more: NONE, end });
            }
        }
        out.nodes.append(&mut extra);
        out
    }

    fn add_edges(&mut self, maker: &mut Maker, edges: &[Branch], more: u32, end: u32) -> Node {
        let firsts = maker.edge_sets(edges.len());
        let at = small(self.edges.len());
        for (step, rests, to) in edges {
            let rests = rests.iter().cloned().map(Plain::Seq).collect();
            maker.add_edge_set(&Plain::Alt(rests));
            let step = maker.made(*step);
            let open = !matches!(step.op, Op::Opt(_) | Op::Star(_) | Op::Not(_) | Op::And(_));
            self.edges.push(Edge { step, open, to: small(*to) });
        }
        let all = u64::MAX >> (MOST_EDGES - edges.len());
        Node { edges: at, firsts, all, more, end }
    }
}
