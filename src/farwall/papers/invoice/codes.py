"""Codes that an invoice is written in: countries, currencies, units, kinds of tax and of invoice.

Source: ISO 3166-1 alpha-2, ISO 4217, UN/ECE Recommendation 20 [rec-20], UN/EDIFACT code lists 1001,
4461 and 5305 [uncl-1001]; a test holds them to the lists in the published rules of [en16931].
"""

from __future__ import annotations

from farwall.facts.prices import TaxKind
from farwall.price.invoice import Kind, Unit

_COUNTRIES = (
    "AD AE AF AG AI AL AM AO AQ AR AS AT AU AW AX AZ BA BB BD BE BF BG BH BI BJ BL BM BN BO BQ "
    "BR BS BT BV BW BY BZ CA CC CD CF CG CH CI CK CL CM CN CO CR CU CV CW CX CY CZ DE DJ DK DM "
    "DO DZ EC EE EG EH ER ES ET FI FJ FK FM FO FR GA GB GD GE GF GG GH GI GL GM GN GP GQ GR GS "
    "GT GU GW GY HK HM HN HR HT HU ID IE IL IM IN IO IQ IR IS IT JE JM JO JP KE KG KH KI KM KN "
    "KP KR KW KY KZ LA LB LC LI LK LR LS LT LU LV LY MA MC MD ME MF MG MH MK ML MM MN MO MP MQ "
    "MR MS MT MU MV MW MX MY MZ NA NC NE NF NG NI NL NO NP NR NU NZ OM PA PE PF PG PH PK PL PM "
    "PN PR PS PT PW PY QA RE RO RS RU RW SA SB SC SD SE SG SH SI SJ SK SL SM SN SO SR SS ST SV "
    "SX SY SZ TC TD TF TG TH TJ TK TL TM TN TO TR TT TV TW TZ UA UG UM US UY UZ VA VC VE VG VI "
    "VN VU WF WS XI YE YT ZA ZM ZW "
)
COUNTRIES = frozenset(_COUNTRIES.split())
"""ISO 3166-1 alpha-2, with XI for Northern Ireland."""

_CURRENCIES = (
    "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BHD BIF BMD BND BOB BOV BRL BSD BTN BWP "
    "BYN BZD CAD CDF CHE CHF CHW CLF CLP CNH CNY COP COU CRC CUP CVE CZK DJF DKK DOP DZD EGP "
    "ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GNF GTQ GYD HKD HNL HTG HUF IDR ILS INR IQD IRR "
    "ISK JMD JOD JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA "
    "MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK "
    "PHP PKR PLN PYG QAR RON RSD RUB RWF SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STD SVC "
    "SYP SZL THB TJS TMT TND TOP TRY TTD TWD TZS UAH UGX USD USN UYI UYU UYW UZS VES VED VND "
    "VUV WST XAF XAG XAU XBA XBB XBC XBD XCD XCG XDR XOF XPD XPF XPT XSU XTS XUA XXX YER ZAR "
    "ZMW ZWG "
)
CURRENCIES = frozenset(_CURRENCIES.split())
"""ISO 4217."""

UNITS: dict[Unit, str] = {
    "one": "C62", "square foot": "FTK", "square metre": "MTK", "hour": "HUR",
}  # fmt: skip
TAXES: dict[TaxKind, str] = {
    "standard": "S", "zero": "Z", "exempt": "E", "reverse charge": "AE", "not subject": "O",
}  # fmt: skip
KINDS: dict[Kind, str] = {"deposit": "386", "progress": "326", "final": "380", "credit": "381"}
"""Prepayment invoice, partial invoice, commercial invoice, credit note."""
TRANSFER, SEPA_TRANSFER, OTHERWISE = "30", "58", "1"
"""Means of payment: credit transfer, the same within SEPA, not defined."""


def tax_country(tax_id: str) -> bool:
    """Whether a tax number begins with its country, as a VAT number does (BR-CO-09)."""
    head = tax_id.strip()[:2]
    return head in COUNTRIES or head == "EL"
