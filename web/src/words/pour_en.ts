/** Words of the gate in English. */
export const POUR_EN = {
  pourKey: "May it be poured?",
  pourHint: "Tap what stands there, then what is poured in. What is left in a vessel stands there too.",
  pourThen: "{one}, then {other}", pourIn: "{things}; in {vessel}.",
  pourFirst: "What stands there", pourNext: "What is poured in", pourVessel: "In what: {vessel}", pourAnew: "Start anew",
  pourBrought: "Brought, on no list", pourOwn: "On this job", pourWhere: "In what?",
  "pour-refused": "Refused", "pour-allowed with warning": "Allowed, with care", "pour-allowed": "Allowed",
  "pour-": "Not asked: unknown means no",
  pourUnknown: "The list on this phone does not know this. Keep them apart until the book was asked, with signal, or the sheets were read.",
  pourOld: "The list on this phone is too old to allow anything. Ask the book, with signal.",
  pourByBook: "By the book, at {at}.",
  pourByList: "By the list on this phone of {at}; nothing else may be in it.",
  pourByPlan: "By the list that came with this plan: it may only refuse.",
  pourNoList: "This phone has no list of materials yet.",
  mixRefused: "The gate refuses this mix. {what} {instead}",
  pourWins: "The sheet of the material in hand wins.",
};
