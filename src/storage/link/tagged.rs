//! Enums in a link whose variants have numbers of their own, in the bytes that postcard would write
//! for a variant of that place. A number, once released, is never changed.

/// An enum, each variant with its number and named fields.
macro_rules! tagged {
    ($(#[$meta:meta])* enum $name:ident {
        $($(#[$about:meta])* $number:literal => $variant:ident($($field:ident: $type:ty),+),)+
    }) => {
        $(#[$meta])*
        pub(super) enum $name {
            $($(#[$about])* $variant($($type),+),)+
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                const fn byte(number: u8) -> u8 {
                    number
                }
                match self {
                    $(Self::$variant($($field),+) => (byte($number), $($field),+).serialize(to),)+
                }
            }
        }

        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
                struct Fields;

                impl<'de> serde::de::Visitor<'de> for Fields {
                    type Value = $name;

                    fn expecting(&self, f: &mut std::fmt::Formatter) -> std::fmt::Result {
                        f.write_str("a number and its fields")
                    }

                    fn visit_seq<A: serde::de::SeqAccess<'de>>(
                        self,
                        mut fields: A,
                    ) -> Result<$name, A::Error> {
                        let number: u8 = $crate::storage::link::tagged::next(&mut fields)?;
                        match number {
                            $($number => {
                                $(let $field = $crate::storage::link::tagged::next(&mut fields)?;)+
                                Ok($name::$variant($($field),+))
                            })+
                            _ => Err(serde::de::Error::custom("no variant has this number")),
                        }
                    }
                }

                // As many fields as any variant has; the bytes do not say how many follow.
                from.deserialize_tuple(8, Fields)
            }
        }
    };
}
pub(super) use tagged;

/// The next field.
pub(super) fn next<'de, A: serde::de::SeqAccess<'de>, T: serde::Deserialize<'de>>(
    fields: &mut A,
) -> Result<T, A::Error> {
    let field = fields.next_element()?;
    field.ok_or_else(|| serde::de::Error::custom("cut short"))
}
