//! The components of a food, with the specific heat, conductivity and density of each.

/// What foods are made of, as far as heat is concerned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Component {
    /// Water; below 0 °C, water that has not frozen.
    Water,
    /// Ice.
    Ice,
    /// Protein.
    Protein,
    /// Fat, melted or not: its heat of melting is counted apart.
    Fat,
    /// Starch and dissolved sugars; fibre is not in it.
    Carbohydrate,
    /// Fibre.
    Fibre,
    /// Ash.
    Ash,
    /// Sugar in dry crystals.
    SugarCrystals,
    /// Salt in dry crystals.
    SaltCrystals,
    /// Alcohol.
    Alcohol,
}

/// A property against temperature: `a + b·t + c·t²`, t in °C.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Quadratic {
    pub(crate) a: f64,
    pub(crate) b: f64,
    pub(crate) c: f64,
}

const fn quadratic(a: f64, b: f64, c: f64) -> Quadratic {
    Quadratic { a, b, c }
}

impl Quadratic {
    /// Its value at `t`.
    pub(crate) fn at(self, t: f64) -> f64 {
        self.a + t * (self.b + t * self.c)
    }

    /// Its integral from 0 to `t`.
    pub(crate) fn up_to(self, t: f64) -> f64 {
        t * (self.a + t * (self.b / 2.0 + t * self.c / 3.0))
    }

    /// Its mean between `from` and `to`.
    pub(crate) fn mean(self, from: f64, to: f64) -> f64 {
        self.a + self.b * (from + to) / 2.0 + self.c * (from * from + from * to + to * to) / 3.0
    }

    /// Itself with `share` times `other` added.
    pub(crate) fn plus(self, share: f64, other: Self) -> Self {
        quadratic(
            self.a + share * other.a,
            self.b + share * other.b,
            self.c + share * other.c,
        )
    }
}

impl Component {
    /// Every component, in the order tables print them.
    pub const ALL: [Self; 10] = [
        Self::Water,
        Self::Ice,
        Self::Protein,
        Self::Fat,
        Self::Carbohydrate,
        Self::Fibre,
        Self::Ash,
        Self::SugarCrystals,
        Self::SaltCrystals,
        Self::Alcohol,
    ];

    /// Specific heat in kJ/(kg·K) at 0 °C and above.
    ///
    /// Choi and Okos's constant for water is 4.1762: many reprints have 4.1289, which no
    /// measurement of water bears out. Their carbohydrate overstates dry sugar by a quarter, and
    /// their ash dry salt, so crystals have values of their own.
    ///
    /// Source: Y. Choi, M. R. Okos, "Effects of temperature and composition on the thermal
    /// properties of foods", 1986; sucrose: Mathlouthi and Reiser, *Sucrose*, 1995 (from memory);
    /// salt: *CRC Handbook*, 50.5 J/(mol·K); alcohol: *CRC Handbook*, 112.3 J/(mol·K) (from memory).
    pub(crate) const fn specific_heat(self) -> Quadratic {
        match self {
            Self::Water => quadratic(4.1762, -9.0864e-5, 5.4731e-6),
            Self::Ice => quadratic(2.0623, 6.0769e-3, 0.0),
            Self::Protein => quadratic(2.0082, 1.2089e-3, -1.3129e-6),
            Self::Fat => quadratic(1.9842, 1.4733e-3, -4.8008e-6),
            Self::Carbohydrate => quadratic(1.5488, 1.9625e-3, -5.9399e-6),
            Self::Fibre => quadratic(1.8459, 1.8306e-3, -4.6509e-6),
            Self::Ash => quadratic(1.0926, 1.8896e-3, -3.6817e-6),
            Self::SugarCrystals => quadratic(1.1265, 4.524e-3, 6.24e-6),
            Self::SaltCrystals => quadratic(0.864, 0.0, 0.0),
            Self::Alcohol => quadratic(2.438, 0.0, 0.0),
        }
    }

    /// Specific heat in kJ/(kg·K) below 0 °C: only that of water is another.
    pub(crate) const fn specific_heat_below_freezing(self) -> Quadratic {
        match self {
            Self::Water => quadratic(4.0817, -5.3062e-3, 9.9516e-4),
            Self::Ice
            | Self::Protein
            | Self::Fat
            | Self::Carbohydrate
            | Self::Fibre
            | Self::Ash
            | Self::SugarCrystals
            | Self::SaltCrystals
            | Self::Alcohol => self.specific_heat(),
        }
    }

    /// Conductivity in W/(m·K). Crystals take that of what they are made of in the food.
    ///
    /// Source: Choi and Okos 1986; the slope for ice and alcohol's constant are from memory.
    pub(crate) const fn conductivity(self) -> Quadratic {
        match self {
            Self::Water => quadratic(0.57109, 1.7625e-3, -6.7036e-6),
            Self::Ice => quadratic(2.2196, -6.2489e-3, 1.0154e-4),
            Self::Protein => quadratic(0.17881, 1.1958e-3, -2.7178e-6),
            Self::Fat => quadratic(0.18071, -2.7604e-4, -1.7749e-7),
            Self::Carbohydrate | Self::SugarCrystals => quadratic(0.20141, 1.3874e-3, -4.3312e-6),
            Self::Fibre => quadratic(0.18331, 1.2497e-3, -3.1683e-6),
            Self::Ash | Self::SaltCrystals => quadratic(0.32962, 1.4011e-3, -2.9069e-6),
            Self::Alcohol => quadratic(0.17, 0.0, 0.0),
        }
    }

    /// Density in kg/m³, without air. Crystals take that of what they are made of in the food.
    ///
    /// Source: Choi and Okos 1986; alcohol's is from memory.
    pub(crate) const fn density(self) -> Quadratic {
        match self {
            Self::Water => quadratic(997.18, 3.1439e-3, -3.7574e-3),
            Self::Ice => quadratic(916.89, -0.13071, 0.0),
            Self::Protein => quadratic(1329.9, -0.51840, 0.0),
            Self::Fat => quadratic(925.59, -0.41757, 0.0),
            Self::Carbohydrate | Self::SugarCrystals => quadratic(1599.1, -0.31046, 0.0),
            Self::Fibre => quadratic(1311.5, -0.36589, 0.0),
            Self::Ash | Self::SaltCrystals => quadratic(2423.8, -0.28063, 0.0),
            Self::Alcohol => quadratic(789.0, 0.0, 0.0),
        }
    }
}
