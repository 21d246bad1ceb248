//! The quantities that statements take.

use downlead_quantity::Dim;

use super::types::Quantity;

macro_rules! quantities {
    ($($(#[$m:meta])* $n:ident [$($d:ident),+] $noun:literal $hole:literal $units:literal;)+) => {
        $($(#[$m])* pub(crate) const $n: Quantity = Quantity {
            dims: &[$(Dim::$d),+],
            noun: $noun,
            hole: $hole,
            units: $units,
        };)+
    };
}

quantities! {
    LENGTH [Length, Wavelengths, Angle] "a length" "LENGTH" "m, mm, cm, km, ft, in, yd, mi, or electrical: wavelengths, °; not negative; `± 0.5 m`";
    METRES [Length] "a length" "LENGTH" "m, mm, cm, km, ft, in; above zero; `± 0.5 m`";
    DIAMETER [Length] "a diameter" "D" "m, mm, cm, in; above zero";
    HEIGHT [Length] "a height" "HEIGHT" "m or ft";
    LOSS [Decibel, Percent] "a loss" "LOSS" "dB, never negative; also %; `± 0.15 dB`, `0.10 dB to 0.20 dB`";
    RATIO_DB [Decibel] "a ratio in dB" "RATIO" "dB, not negative";
    GAIN_DB [Decibel] "a gain in dB" "GAIN" "dB";
    NOISE [Decibel] "a noise figure" "NF" "dB, not negative";
    RETURN_LOSS [Decibel] "a return loss" "RETURN-LOSS" "dB; above zero";
    SHARE_OR_LOSS [Percent, Decibel] "a share, or the loss to a branch" "SHARE" "% of the power, or dB of loss";
    POWER [Power, Level] "a power" "POWER" "W, mW, uW, kW, or dBm, dBW; above zero; `± 5 %`";
    RULED [Power, Level, PowerDensity, ElectricField, MagneticField] "a power or a field" "POWER" "W, mW, kW, dBm; of exposure W/m2, mW/cm2, V/m, A/m";
    SHOWN [Power, Level, Decibel, Percent] "what was read" "READING" "W, mW, dBm; or dB of loss";
    SIDEBAND [SidebandNoise] "a noise over the carrier" "NOISE" "dBc/Hz, negative; `± 3 dB`";
    LEVEL [Level, Power] "a level" "LEVEL" "dBm; `± 3 dB`";
    OFFSET [Frequency] "an offset" "OFFSET" "kHz, MHz; the distance of two frequencies";
    SENSITIVITY [Level, Voltage, Power] "a sensitivity" "LEVEL" "dBm, or uV across 50 ohm";
    GAIN [GainIsotropic, GainDipole] "an antenna's gain" "GAIN" "dBi (over isotropic) or dBd (over a half-wave dipole)";
    SWR [Count] "an SWR" "SWR" "1 or more, no unit";
    NUMBER [Count] "a number" "NUMBER" "no unit";
    COUNT [Count] "a number" "COUNT" "a whole number";
    VELOCITY [Count, Percent] "a velocity factor" "FACTOR" "0.1 to 1, no unit; or %";
    FREQUENCY [Frequency] "a frequency" "FREQUENCY" "MHz, kHz, GHz, Hz; above zero";
    SHARE [Percent] "a share" "SHARE" "%; above 0, at most 100";
    OFF_SHARE [Percent] "a share with its sign" "SHARE" "%; + for too high, - for too low";
    ACCURACY [Percent, Decibel] "an accuracy" "ACCURACY" "% or dB, a half-width; with `k 2` an expanded uncertainty";
    ACCURACY_DB [Decibel] "an accuracy" "ACCURACY" "dB, a half-width; with `k 2` an expanded uncertainty";
    TEMPERATURE [Temperature] "a temperature" "TEMPERATURE" "°C or °F; an interval counts as uncertainty";
    WARM_AT [Temperature, Frequency] "a temperature or frequency" "AT" "°C or °F; or MHz, kHz, GHz, Hz";
    VOLTAGE [Voltage] "a voltage" "VOLTAGE" "V, kV; above zero";
    IMPEDANCE [Impedance] "a resistance" "R" "ohm; above zero";
    REACTANCE [Impedance] "a reactance" "X" "ohm; negative for a capacitive one";
    RESISTIVITY [Resistivity] "a resistivity" "RESISTIVITY" "ohm-m; above zero";
    COEFFICIENT [RootCoefficient, LinearCoefficient, LossRate] "a coefficient of a cable's loss" "K1 + K2" "dB/100 m/sqrt(MHz) and dB/100 m/MHz, also per 100 ft";
    RATE [LossRate] "a loss per length" "RATE" "dB/100 m, dB/m, dB/km, dB/100 ft, dB/ft";
    ANGLE [Angle] "an angle" "ANGLE" "°, or degrees, minutes and seconds with primes";
    TIME [Time] "a time" "TIME" "min, s, h";
    STEP [Power, Decibel, Length, Frequency, Angle] "a step" "STEP" "a number in the field's own unit: 1 W, 0.1 dB, 1 m, 0.0001 MHz; above zero";
    OFF_BY [Length, Frequency] "how far it may be off" "LIMIT" "m for a position or height, kHz for a frequency";
    DELAY [Time] "a delay" "TIME" "ns, us, s";
    ANY [Length, Decibel, Power, Frequency] "a value" "VALUE" "a number with its unit, or arithmetic";
}
