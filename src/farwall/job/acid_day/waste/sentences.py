"""The sentences of the waste water that do not hang on figures."""

from __future__ import annotations

from collections.abc import Iterable

from farwall.acid.waste_limits import LOCAL_PH


def _either(figures: Iterable[float]) -> str:
    *but_last, last = [f"{one:g}" for one in sorted(set(figures))]
    return f"{', '.join(but_last)} or {last}"


DEFERS = (
    "This informs and decides nothing: the utility says what its sewer takes, the state agency "
    "what is hazardous waste, a licensed hauler what he carries."
)
NEVER = (
    "Never into a storm drain, a street, soil, a pond or a septic tank: it holds acid and metals."
)
REFUSED = {
    "septic": "No: a septic tank lies under the house. Acid and metals kill it and go on into the "
    "ground.",
    "storm drain": "No: there is only a storm drain, and it runs to a creek as it is.",
    "no way": "No: there is no way for the rinse water yet. Drums and a licensed hauler, or the "
    "sewer with the utility's written word.",
}
STEP_DRUMS = "Vacuum all of it into drums with vented lids; number each drum and log it."
STEP_LEFT_OVER = (
    "Left-over mix stays out of the drums: at pH 2 or below it is hazardous waste by itself, D002."
)
STEP_TREATMENT = (
    "Ask the state agency before raising the pH in a drum: neutralising acid may be treatment. "
    "Federal rules let what is hazardous by its pH alone be neutralised without a permit (40 CFR "
    "260.10 and 270.1); with chromium they do not, and a state may ask more."
)
STEP_RAISE = (
    "Where that is allowed: raise the pH to 8 to 9, lid off until the fizz ends, settle overnight. "
    f"{len(LOCAL_PH)} local codes that were read take water into the "
    f"sewer from pH {_either(low for low, _ in LOCAL_PH)} up to "
    f"{_either(high for _, high in LOCAL_PH)}: yours decides."
)
STEP_TEST = (
    "Have each drum tested by a laboratory for everything that a limit was named for. A strip "
    "shows pH and no metal."
)
STEP_DECANT = "Decant clear water only with permission, and stop above the sludge."
STEP_SLUDGE = "Sludge, rags and filters go to a licensed place, closed and labelled."
STEP_KEEP = "Keep who said yes and when, where it went, and the manifest number."
STEPS = (
    STEP_DRUMS, STEP_LEFT_OVER, STEP_TREATMENT, STEP_RAISE, STEP_TEST, STEP_DECANT, STEP_SLUDGE,
    STEP_KEEP,
)  # fmt: skip
CLEAR = "Clear is not clean: test, never infer."
CLEAR_CHROMIUM = "Hexavalent chromium does not fall out at any pH."
CLEAR_MANGANESE = (
    "Much manganese stays dissolved: its hydroxide alone lets {low} mg/L and more stay at pH 9, "
    "and all of it at pH 8."
)
CLEAR_AMMONIA = (
    "Ammonia keeps copper dissolved: with 0.1 mol/L of it about {high} mg/L at pH 8 to 9. Without "
    "it up to about 0.6 mg/L may stay, more than some limits allow."
)
CLEAR_IRON = "Iron falls out, most of it, once air has turned it."
CLEAR_CEMENT = (
    "Cement brings traces of hexavalent chromium of its own: have it tested though no sheet names "
    "chromate."
)
UNREAD = (
    "The metals of {stain} are not known: nobody entered what section 3 of its sheet lists. For "
    "scale: copper chloride at 10 % lays about 97 g of copper on 100 ft² in two coats; if 1 % "
    "of it washes into 12 gal that is 21 mg/L, if 30 % 640, against local limits of 0.06 to 6.0."
)
SMALL_GENERATOR = (
    "The rinse water weighs about {kg} kg. If it is hazardous waste, that is more than the 100 kg "
    "a month of a very small generator (40 CFR 262.14), and more rules hold."
)
ASK_WORD = (
    "Nobody's word is entered: ask the utility, the state agency or a licensed hauler, and enter "
    "name, office and day."
)
ASK_SEWER = "The survey says sewer in writing, and no written word with name and day is entered."
SAID_NO = "{office} said no. Ask for another way, and enter who takes the water."
ASK_HAULER = "Enter who takes the drums: name, office and day."
ASK_TESTS = "No drum is tested yet."
ASK_SHARE = (
    "How much of a stain's metal washes off is a guess: one test of all the water of one floor "
    "makes it a measured figure."
)
