package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// ShapeRounded is the code of the advice on rails that do not close as they are shown.
const ShapeRounded explain.Code = "shape.rounded"

// A ChainPlan is where the rails of a closed frame end, joined one after the other
// and cut with the error of the shop's saw; see [molding.ChainEnd].
type ChainPlan struct {
	Along  Figure      `json:"along"`
	Across Figure      `json:"across"`
	Miss   Figure      `json:"miss"`
	Turned AngleFigure `json:"turned"`
	Over   AngleFigure `json:"over"`
	Open   Figure      `json:"open"`
	Slide  Figure      `json:"slide"`
}

// chain is the rails of a closed frame that lies flat, as they are cut: the ends off
// by the error of the saw, each rail as long as it is said to be. There is none where
// a rail has no outer edge, or an end turns too far.
func (w *worker) chain(x *exactShape, off measure.Angle, long func(measure.Length) measure.Length) molding.Chain {
	if w.form() == regular || !w.Frame.Slope.IsZero() || !x.polygon.Closed() {
		return nil
	}
	chain := make(molding.Chain, 0, len(x.polygon.Rails))
	for _, r := range x.polygon.Rails {
		cut := molding.CutRail{Long: long(r.Outer), Left: r.Start.Saw + off, Right: r.Finish.Saw + off}
		if cut.Long <= 0 || max(cut.Left, cut.Right) > molding.MostPlain || min(cut.Left, cut.Right) < -molding.MostPlain {
			return nil
		}
		chain = append(chain, cut)
	}
	return chain
}

func exactly(l measure.Length) measure.Length { return l }

// assembleChain is where the chain ends.
func assembleChain(c molding.Chain, figure func(string, measure.Length) Figure) ChainPlan {
	end := c.End()
	return ChainPlan{
		Along: figure("along", end.Along), Across: figure("across", end.Across), Miss: figure("miss", end.Miss),
		Turned: angleFigure(end.Turned), Over: angleFigure(end.Over),
		Open: figure("open", end.Open), Slide: figure("slide", end.Slide),
	}
}

// chainNotes say whether the rails close with the error of the saw, and with the
// lengths as they are shown.
func (w *worker) chainNotes(x *exactShape) []explain.Note {
	var notes []explain.Note
	saw, at := w.shop.Saw, w.at.worked+"/shape"
	if c := w.chain(x, saw.Off, exactly); c != nil && saw.Off != 0 {
		if end := c.End(); end.Miss > saw.Seen {
			notes = append(notes, explain.Note{Level: explain.Warning, Code: molding.LastJointOpens, Path: at + "/end/miss", Values: []explain.Term{
				explain.NewTerm("off", saw.Off, orderRoot+"/shop/saw/off"),
				explain.NewTerm("miss", end.Miss, at+"/end/miss"),
				explain.NewTerm("wedge", max(end.Open, -end.Open), ""),
				explain.NewTerm("seen", saw.Seen, orderRoot+"/shop/saw/seen"),
			}})
		}
	}
	shown := func(l measure.Length) measure.Length { return w.shownAs("outer", l) }
	if c := w.chain(x, 0, shown); c != nil {
		if miss := c.End().Miss; miss > saw.Seen {
			notes = append(notes, explain.Note{Level: explain.Advice, Code: ShapeRounded, Path: at + "/rails", Values: []explain.Term{
				explain.NewTerm("miss", miss, ""),
				explain.NewTerm("fineness", w.format.Step, orderRoot+"/show/fineness"),
			}})
		}
	}
	return notes
}
