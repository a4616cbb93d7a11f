package measure

import "strconv"

// A Rule is one way in which text can fail to be a measure. Its value is a code
// that stays the same from version to version; the words for it may change.
type Rule string

// The rules.
const (
	RuleEmpty           Rule = "empty"             // no text, or only spaces
	RuleTooLong         Rule = "too_long"          // more than 100 bytes
	RuleTooManyTerms    Rule = "too_many_terms"    // a sum of more than 16 terms
	RuleTooManyDigits   Rule = "too_many_digits"   // more than 19 digits in a number
	RuleRange           Rule = "range"             // past the ends of the type
	RuleWrongBare       Rule = "wrong_bare"        // the caller's bare unit measures something else
	RuleNoUnit          Rule = "no_unit"           // a number without a unit, and no bare unit
	RuleUnknownUnit     Rule = "unknown_unit"      // a unit that is none, or measures something else
	RuleNotANumber      Rule = "not_a_number"      // something else where a number must stand
	RuleComma           Rule = "comma"             // 1,250: a comma before exactly three digits
	RuleTwoMarks        Rule = "two_decimal_marks" // 1,250.5 and 1.2.3
	RuleNoDecimals      Rule = "no_decimals"       // 20. with nothing after the point
	RuleExponent        Rule = "exponent"          // 1e3
	RuleDigitGroups     Rule = "digit_groups"      // 1 250: a space between whole numbers
	RuleMixed           Rule = "mixed"             // 1.5 1/2: a fraction after what is no whole number
	RuleImproper        Rule = "improper"          // 3 5/4: the fraction of a mixed number not below one
	RuleLostSpace       Rule = "lost_space"        // 2013/16, which may be 20 13/16
	RuleSlash           Rule = "slash"             // a slash without a whole number on each side
	RuleZeroDenominator Rule = "zero_denominator"  // 1/0
	RuleHyphenSpaced    Rule = "hyphen_spaced"     // 20 - 13/16: join or minus?
	RuleSubtraction     Rule = "subtraction"       // 20-13: a difference is not read
	RuleSignedSum       Rule = "signed_sum"        // a minus anywhere in a sum
	RuleMixedUnits      Rule = "mixed_units"       // 4 + 9 cm with bare inches; 1' 8 mm
	RuleFeetFraction    Rule = "feet_fraction"     // 1.5' 8": part of a unit before a smaller unit
	RulePartTooLarge    Rule = "part_too_large"    // 1' 14": a smaller unit that fills the larger one
	RuleTrailing        Rule = "trailing"          // something after the end of the measure
)

// Rules returns every rule, in the order above, in a new slice: a table of
// translations can be held against it.
func Rules() []Rule {
	return []Rule{
		RuleEmpty, RuleTooLong, RuleTooManyTerms, RuleTooManyDigits, RuleRange, RuleWrongBare,
		RuleNoUnit, RuleUnknownUnit, RuleNotANumber, RuleComma, RuleTwoMarks, RuleNoDecimals,
		RuleExponent, RuleDigitGroups, RuleMixed, RuleImproper, RuleLostSpace, RuleSlash,
		RuleZeroDenominator, RuleHyphenSpaced, RuleSubtraction, RuleSignedSum, RuleMixedUnits,
		RuleFeetFraction, RulePartTooLarge, RuleTrailing,
	}
}

// Words says in English what the rule found; it is empty for what is no rule.
func (r Rule) Words() string {
	switch r {
	case RuleEmpty:
		return "there is nothing to read"
	case RuleTooLong:
		return "the text is too long"
	case RuleTooManyTerms:
		return "the sum has too many terms"
	case RuleTooManyDigits:
		return "the number has too many digits"
	case RuleRange:
		return "the measure is too large to hold"
	case RuleWrongBare:
		return "the unit for bare numbers measures something else"
	case RuleNoUnit:
		return "the number has no unit"
	case RuleUnknownUnit:
		return "the unit is not known here"
	case RuleNotANumber:
		return "a number should stand here"
	case RuleComma:
		return "a comma before exactly three digits may be a decimal mark or a thousands mark"
	case RuleTwoMarks:
		return "the number has two decimal marks"
	case RuleNoDecimals:
		return "nothing follows the decimal mark"
	case RuleExponent:
		return "exponents are not read"
	case RuleDigitGroups:
		return "a space parts two numbers"
	case RuleMixed:
		return "a fraction goes with a whole number only"
	case RuleImproper:
		return "the fraction after a whole number is not below one"
	case RuleLostSpace:
		return "a space may be missing before the fraction"
	case RuleSlash:
		return "the slash needs a whole number on each side"
	case RuleZeroDenominator:
		return "the fraction is divided by zero"
	case RuleHyphenSpaced:
		return "the hyphen may join a fraction or be a minus"
	case RuleSubtraction:
		return "a difference is not read"
	case RuleSignedSum:
		return "a sum may not have a minus"
	case RuleMixedUnits:
		return "the units do not go together"
	case RuleFeetFraction:
		return "the number before a smaller unit is not whole"
	case RulePartTooLarge:
		return "the smaller unit fills the larger one"
	case RuleTrailing:
		return "something follows the measure"
	}
	return ""
}

// A ParseError says why a text is no measure. Compare its Rule, not its words.
type ParseError struct {
	Text   string // the whole text as it was given
	Offset int    // the byte of Text at fault; len(Text) where something is missing at its end
	Rule   Rule
	// Accepted says what would do there, in shop words: "1250, or 1.250".
	Accepted string
}

// Error quotes the whole text, or its first 100 bytes where that is the fault,
// and says the place, the rule in words and what is accepted.
func (e *ParseError) Error() string {
	b := append(make([]byte, 0, 160), "measure: "...)
	text := e.Text
	if len(text) > maxText {
		text = text[:maxText]
	}
	b = strconv.AppendQuote(b, text)
	if len(text) < len(e.Text) {
		b = append(b, "..."...)
	}
	b = append(b, " at byte "...)
	b = strconv.AppendInt(b, int64(e.Offset), 10)
	b = append(b, ": "...)
	b = append(b, e.Rule.Words()...)
	if e.Accepted != "" {
		b = append(b, "; accepted: "...)
		b = append(b, e.Accepted...)
	}
	return string(b)
}
