//! The ways to say a set of rules as one tree: what several have in common at their start is tried once.
//!
//! From a node every edge that fits is followed; of all ends reached the farthest counts, of two alike
//! the one that stands first in the files. What the ways along the edges of a node can start with are
//! sets with numbers in a row, so that the edges worth following are found as a few bits at once.

use super::plain::Plain;
use super::program::{Maker, Op, SetId, Step, StepId, small};
use serde::{Deserialize, Serialize};
use std::ops::Range;

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

/// Stands for "no rule ends here".
pub const NO_END: u32 = u32::MAX;

/// A place in the tree.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub struct Node {
    first_edge: u32,
    end_edge: u32,
    /// The set of what the way along the first edge can start with; those of the others follow.
    pub firsts: SetId,
    /// The first way to say a rule that ends here, by its place in [`Tree::ends`]; or [`NO_END`].
    pub end: u32,
}

impl Node {
    /// Where it goes on, as places in [`Tree::edges`].
    pub const fn edges(&self) -> Range<usize> {
        self.first_edge as usize..self.end_edge as usize
    }
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

/// A node while the tree grows.
#[derive(Default)]
struct Growing {
    edges: Vec<(StepId, Vec<Vec<Plain>>, usize)>,
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
        for node in growing {
            let first_edge = small(out.edges.len());
            let firsts = maker.edge_sets();
            for (step, rests, to) in node.edges {
                maker.add_edge_set(&Plain::Alt(rests.into_iter().map(Plain::Seq).collect()));
                let step = maker.made(step);
                let open = !matches!(step.op, Op::Opt(_) | Op::Star(_) | Op::Not(_) | Op::And(_));
                out.edges.push(Edge { step, open, to: small(to) });
            }
            let end = node.end.map_or(NO_END, small);
            out.nodes.push(Node { first_edge, end_edge: small(out.edges.len()), firsts, end });
        }
        out
    }
}
