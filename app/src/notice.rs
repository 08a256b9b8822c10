//! What the page says to the reader. The sentences are the text's.

use hindsaddle_model::link::LinkError;
use hindsaddle_model::product::Product;
use hindsaddle_model::rules::Refusal;

/// Something said to the reader until it is dismissed or replaced.
#[derive(Clone, Debug, PartialEq)]
pub enum Notice {
    /// A change was refused.
    Refused(Refusal),
    /// Part of a change to a region was not possible.
    Skipped(Vec<Refusal>, Product),
    /// A link was opened; the plan before it is one step back.
    LinkOpened,
    /// A plan that was kept is open again; the one before it is kept in its turn.
    KeptOpened,
    /// Another plan was opened, and the one before it could not be put on the list: it is one step back alone.
    OpenedUnkept,
    /// The reader's own plan stays open, and the other is kept.
    BothKept,
    /// A link could not be opened.
    LinkRefused(LinkError),
    /// The link is a lesson's, whose page is another.
    Lesson(String),
    /// What this browser remembered could not be read.
    MemoryRefused(LinkError),
    /// Storage refuses.
    NotRemembered,
    /// The list of kept plans is full.
    KeptFull,
    /// The link is on the clipboard.
    Copied,
    /// The clipboard refuses.
    NotCopied,
    /// The picture is among the reader's files.
    Saved,
    /// The browser could not make it.
    NotSaved,
    /// A file that is too long to be a plan.
    FileTooLong,
    /// A newer build of the page is ready.
    Newer,
}

impl Notice {
    /// What is said of a link that is no plan's.
    pub fn of_link(error: LinkError, link: &str) -> Self {
        match error {
            LinkError::Lesson => Notice::Lesson(link.to_owned()),
            LinkError::Empty
            | LinkError::TooLong
            | LinkError::Newer
            | LinkError::Unknown
            | LinkError::Character
            | LinkError::CutShort
            | LinkError::Mistyped
            | LinkError::Impossible => Notice::LinkRefused(error),
        }
    }

    /// What is said of a file that was to be saved.
    pub fn saved(worked: bool) -> Self {
        if worked { Notice::Saved } else { Notice::NotSaved }
    }
}
