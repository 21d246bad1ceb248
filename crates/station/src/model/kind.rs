//! Kinds of parts: one table, from which the words, the tags people write and what lowering does
//! follow.

/// What a part of a kind is in a chain: what lowering and evaluation do follows from it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Role {
    /// Where power begins.
    Transmitter,
    /// Where a signal ends.
    Receiver,
    /// Where power begins and a signal ends, on one line.
    Transceiver,
    /// A length of cable, or a stated loss in its place.
    Line,
    /// What stands between two others: a connector or adapter.
    Join,
    /// A device that loses the same both ways.
    Through,
    /// A device whose figures hold one way round.
    Directed,
    /// A device with a gain, one way round.
    Active,
    /// A device that a chain passes through one of its legs or ports, which keep something off.
    Legs,
    /// A device after which a chain branches.
    Divider,
    /// Where power ends: an antenna or load.
    End,
}

impl Role {
    /// Whether parts of it are devices, of which a library can define examples.
    #[must_use]
    pub const fn is_device(self) -> bool {
        match self {
            Role::Through | Role::Directed | Role::Active | Role::Legs | Role::Divider => true,
            Role::Transmitter
            | Role::Receiver
            | Role::Transceiver
            | Role::Line
            | Role::Join
            | Role::End => false,
        }
    }
}

macro_rules! part_kinds {
    (parts { $($kind:ident $word:literal $article:literal $tag:literal $role:ident;)+ }
     apart { $($(#[$m:meta])* $akind:ident $aword:literal $aarticle:literal $atag:literal $arole:ident;)+ }) => {
        /// Kind of a part; the word is the language's keyword.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        #[allow(missing_docs, reason = "the words speak for themselves")]
        pub enum PartKind {
            $($kind,)+
            $($(#[$m])* $akind,)+
        }

        impl PartKind {
            /// All kinds that a station or chain can hold.
            pub const ALL: [PartKind; [$($word),+].len()] = [$(PartKind::$kind),+];

            /// Keyword.
            #[must_use]
            pub const fn word(self) -> &'static str {
                match self {
                    $(PartKind::$kind => $word,)+
                    $(PartKind::$akind => $aword,)+
                }
            }

            /// Keyword with its article: `an isolator`.
            #[must_use]
            pub fn with_article(self) -> String {
                match self {
                    $(PartKind::$kind => concat!($article, " ", $word),)+
                    $(PartKind::$akind => concat!($aarticle, " ", $aword),)+
                }
                .to_owned()
            }

            /// Letters of its tags, as people write them.
            #[must_use]
            pub const fn tag(self) -> &'static str {
                match self {
                    $(PartKind::$kind => $tag,)+
                    $(PartKind::$akind => $atag,)+
                }
            }

            /// What it is in a chain.
            #[must_use]
            pub const fn role(self) -> Role {
                match self {
                    $(PartKind::$kind => Role::$role,)+
                    $(PartKind::$akind => Role::$arole,)+
                }
            }
        }
    };
}

part_kinds! {
    parts {
        Transmitter "transmitter" "a" "TX" Transmitter;
        Receiver "receiver" "a" "RX" Receiver;
        Transceiver "transceiver" "a" "TR" Transceiver;
        Run "run" "a" "M" Line;
        Jumper "jumper" "a" "J" Line;
        Tail "tail" "a" "T" Line;
        Connector "connector" "a" "C" Join;
        Adapter "adapter" "an" "AD" Join;
        Pad "pad" "a" "PD" Through;
        Filter "filter" "a" "F" Through;
        Isolator "isolator" "an" "IS" Directed;
        Circulator "circulator" "a" "CR" Directed;
        Protector "protector" "a" "SP" Through;
        Switch "switch" "a" "SW" Legs;
        Coupler "coupler" "a" "CP" Directed;
        Meter "meter" "a" "ME" Through;
        Balun "balun" "a" "B" Through;
        Tuner "tuner" "a" "TU" Through;
        Duplexer "duplexer" "a" "DU" Legs;
        Diplexer "diplexer" "a" "DX" Legs;
        Combiner "combiner" "a" "CO" Legs;
        Divider "divider" "a" "DV" Divider;
        Amplifier "amplifier" "an" "PA" Active;
        Preamplifier "preamplifier" "a" "PR" Active;
        Load "load" "a" "DL" End;
        Antenna "antenna" "an" "A" End;
    }
    apart {
        /// A piece of cable on the bench: in a session, never in a chain.
        Piece "piece" "a" "P" Line;
    }
}

impl PartKind {
    /// The kind of a keyword.
    #[must_use]
    pub fn from_word(word: &str) -> Option<PartKind> {
        PartKind::ALL.into_iter().find(|k| k.word() == word)
    }

    /// The keyword that was meant by a word: a word of the trade for a kind (`attenuator`), else one
    /// that is nearly spelt so.
    #[must_use]
    pub fn meant(word: &str) -> Option<&'static str> {
        let kinds = PartKind::ALL.into_iter();
        crate::forms::mean(
            word,
            kinds.map(|k| (k.word(), crate::forms::of_part(k).also)),
        )
    }

    /// Whether a library can define examples of it: of a device, or of a load.
    #[must_use]
    pub const fn is_definable(self) -> bool {
        self.role().is_device() || matches!(self, PartKind::Load)
    }

    /// Whether its ports are legs that keep something off.
    #[must_use]
    pub fn has_legs(self) -> bool {
        self.role() == Role::Legs
    }

    /// Whether it matters which way round a part of this kind lies when its figures are stated.
    #[must_use]
    pub fn has_direction(self) -> bool {
        matches!(self.role(), Role::Directed | Role::Active)
    }

    /// Whether a transmit chain begins there.
    #[must_use]
    pub fn sends(self) -> bool {
        matches!(self.role(), Role::Transmitter | Role::Transceiver)
    }

    /// Whether a receive chain ends there with what hears.
    #[must_use]
    pub fn hears(self) -> bool {
        matches!(self.role(), Role::Receiver | Role::Transceiver)
    }

    /// Whether a chain can end there on transmit.
    #[must_use]
    pub fn ends_transmit(self) -> bool {
        self.role() == Role::End
    }
}

impl PartKind {
    /// How a part with this tag is defined, for example: of the kind whose letters the tag has, else a
    /// jumper.
    #[must_use]
    pub fn example_for(tag: &str) -> String {
        let letters = tag.trim_end_matches(|c: char| c.is_ascii_digit());
        let of_letters = |k: &PartKind| k.tag() == letters;
        let kind = PartKind::ALL.into_iter().find(of_letters);
        let example = kind
            .and_then(|k| crate::keywords::keyword(k.word()))
            .map(|k| k.example());
        let tagged = example.and_then(|e| {
            let mut words = e.splitn(3, ' ');
            let (word, own, rest) = (words.next()?, words.next()?, words.next()?);
            own.starts_with(letters)
                .then(|| format!("{word} {tag} {rest}"))
        });
        tagged.unwrap_or_else(|| format!("jumper {tag} 1.4 m of rg-213"))
    }
}
