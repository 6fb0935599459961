//! The ways to say a set of rules as one tree: what several have in common at their start is tried once.
//!
//! From a node every edge that fits is followed; of all ends reached the farthest counts, of two alike
//! the one that stands first in the files. The nodes of all trees lie in one list, so that a number is
//! enough to speak of one.

use super::needs::Needed;
use super::plain::Plain;
use super::program::{Maker, Run, SetId, StepId, small};
use serde::{Deserialize, Serialize};

/// A tree of patterns.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Tree {
    /// Its root.
    pub root: NodeId,
    /// The rule and the alternative of each end, in the order of the files.
    pub ends: Vec<(usize, usize)>,
}

/// The place of a node in [`super::program::Program::nodes`].
pub type NodeId = u32;

/// Stands for "no rule ends here".
pub const NONE: u32 = u32::MAX;

/// A place in a tree.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub struct Node {
    /// Where it goes on: places in [`super::program::Program::edges`].
    pub edges: Run,
    /// The first way to say a rule that ends here, by its place in [`Tree::ends`]; or [`NONE`].
    pub end: u32,
}

/// A step from one node to the next.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub struct Edge {
    /// What must stand in the note.
    pub step: StepId,
    /// What the ways along it can start with.
    pub first: SetId,
    /// Which of [`super::program::Program::needs`] must still come, as bits.
    pub needs: Needed,
    /// The node behind it.
    pub to: NodeId,
}

/// A node while the tree grows: its edges as the step, the ways on from it, and the node behind it.
#[derive(Default)]
struct Growing {
    edges: Vec<(StepId, Vec<Vec<Plain>>, usize)>,
    end: Option<usize>,
}

impl Tree {
    /// The tree of these alternatives, given by their rule, their place in it, and their steps.
    pub(super) fn of(maker: &mut Maker, ways: &[(usize, usize, Vec<Plain>)]) -> Self {
        let mut growing = vec![Growing::default()];
        let mut ends = Vec::new();
        for (rule, index, items) in ways {
            let end = ends.len();
            ends.push((*rule, *index));
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
        let root = small(maker.made.nodes.len());
        for node in growing {
            let edges = node.edges.into_iter().map(|(step, rests, to)| {
                let rests: Vec<Plain> = rests.into_iter().map(Plain::Seq).collect();
                maker.add_needs(&rests);
                Edge {
                    step,
                    first: maker.first_of_edge(rests),
                    needs: Needed::default(),
                    to: root + small(to),
                }
            });
            let edges: Vec<Edge> = edges.collect();
            let edges = Run::push(&mut maker.made.edges, edges);
            maker.made.nodes.push(Node { edges, end: node.end.map_or(NONE, small) });
        }
        Self { root, ends }
    }
}
