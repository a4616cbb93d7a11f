package framing

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// An ArtPlan is what follows from an outline or from measured sides. Width, Height
// and Varies count as those of [Art] do: of a regular outline they are across flats.
type ArtPlan struct {
	Width  measure.Length `json:"width"`
	Height measure.Length `json:"height"`
	Varies measure.Size   `json:"varies,omitzero"`
	// Skew is how far art out of square leans, to the right above nothing.
	Skew measure.Angle `json:"skew,omitzero"`
	// Corners are the angles of its corners on the inside.
	Corners []measure.Angle `json:"corners,omitempty"`
	// Turned is the largest clean rectangle with the art turned under the mat. It is
	// turned so in the art: the art is turned the other way.
	Turned plane.Rectangle `json:"turned,omitzero"`
	// Clean is the largest upright one, within Outline.
	Clean   plane.Rectangle `json:"clean,omitzero"`
	Outline []plane.Point   `json:"outline,omitempty"`
}

// IsZero reports whether nothing follows: the art has its own width and height.
func (d ArtPlan) IsZero() bool { return d.Width == 0 }

// A ShapePlan is how the rails of a frame are cut that is no plain rectangle. A
// regular frame has all its rails alike in Regular, any other one has Rails, in the
// order of the panel's sides; sides that slope have Slope beside it, and what
// belongs to rails lying flat is absent.
type ShapePlan struct {
	// Sides are the panel's: the length of each, and what the outline turns at its
	// end.
	Sides []plane.Side `json:"sides,omitempty"`
	// Frame is the frame of those sides, one section for each.
	Frame molding.PolygonFrame `json:"frame,omitzero"`
	// Seen is the molding of a regular frame that slopes as it looks from straight ahead.
	Seen SeenPlan `json:"seen,omitzero"`
	// Panel is the panel of a regular frame.
	Panel   molding.RegularPanel `json:"panel,omitzero"`
	Regular RegularPlan          `json:"regular,omitzero"`
	Rails   []CutPlan            `json:"rails,omitempty"`
	Slope   []SlopePlan          `json:"slope,omitempty"`
	Footage Figure               `json:"footage,omitzero"`
	// Bounds is the upright box around the frame as it hangs.
	Bounds measure.Size `json:"bounds,omitzero"`
	// Last is how the last joint of a regular frame comes out with the error of the
	// shop's saw, Ring what it is worked out from.
	Ring molding.Ring `json:"ring,omitzero"`
	Last LastPlan     `json:"last,omitzero"`
	// ByWedge and ByMiss are the largest errors of a cut of a regular frame that
	// leave no gap that is seen, with the last joint pulled together and with all
	// others tight.
	ByWedge measure.Angle `json:"by_wedge,omitzero"`
	ByMiss  measure.Angle `json:"by_miss,omitzero"`
	// Chain is the rails of a closed frame whose rails differ, as the shop's saw cuts
	// them, and End where they end.
	Chain molding.Chain `json:"chain,omitempty"`
	End   ChainPlan     `json:"end,omitzero"`
	// Outlines is where everything lies, seen from the front.
	Outlines Outlines `json:"outlines,omitzero"`
}

// IsZero reports whether the frame is a plain rectangle, or none.
func (s ShapePlan) IsZero() bool { return s.Sides == nil }

// Closed reports whether there is a rail along each side.
func (s ShapePlan) Closed() bool {
	for _, section := range s.Frame.Sections {
		if section.IsZero() {
			return false
		}
	}
	return true
}

// Outlines are outlines in the plane, X to the right and Y up. What cannot be drawn,
// since nothing is seen in the frame, is absent.
type Outlines struct {
	Panel []plane.Point `json:"panel,omitempty"`
	Sight []plane.Point `json:"sight,omitempty"`
	// Rails are the corners of each rail: along its sight edge from start to finish,
	// then along its outer edge back. A side without a rail has none.
	Rails [][]plane.Point `json:"rails,omitempty"`
}

// IsZero reports whether there is nothing to draw.
func (o Outlines) IsZero() bool { return o.Panel == nil }

// A RegularPlan is a frame of equal rails; see [molding.Regular]. Of sides that slope
// it is the frame as it looks from straight ahead.
type RegularPlan struct {
	Panel      Figure      `json:"panel"`
	Opening    Figure      `json:"opening"`
	Sight      Figure      `json:"sight"`
	Outside    Figure      `json:"outside"`
	Points     Figure      `json:"points"`
	LongPoint  Figure      `json:"long_point"`
	ShortPoint Figure      `json:"short_point"`
	Growth     Figure      `json:"growth"`
	Saw        AngleFigure `json:"saw"`
	Edge       AngleFigure `json:"edge"`
	Footage    Figure      `json:"footage"`
}

// A SeenPlan is what counts of a molding whose face is its run.
type SeenPlan struct {
	Face      measure.Length `json:"face"`
	Lip       measure.Length `json:"lip"`
	Allowance measure.Length `json:"allowance"`
	Gap       measure.Length `json:"gap"`
}

// A CutPlan is one rail of a frame whose rails differ; see [molding.PolygonRail]. A
// side without a rail has the zero CutPlan.
type CutPlan struct {
	Sight  Figure  `json:"sight,omitzero"`
	Outer  Figure  `json:"outer,omitzero"`
	Long   Figure  `json:"long,omitzero"`
	Start  EndPlan `json:"start,omitzero"`
	Finish EndPlan `json:"finish,omitzero"`
}

// IsZero reports whether there is no rail.
func (c CutPlan) IsZero() bool { return c == CutPlan{} }

// An EndPlan is one end of a rail; see [molding.RailEnd].
type EndPlan struct {
	Saw    AngleFigure `json:"saw"`
	Edge   AngleFigure `json:"edge"`
	Growth Figure      `json:"growth"`
	Joint  Figure      `json:"joint"`
	Square bool        `json:"square,omitempty"`
}

// A SlopePlan is a sloped side, or several that are cut alike.
type SlopePlan struct {
	// Sides are the sides that are cut so, counted from 0.
	Sides []int `json:"sides"`
	// Side is the board.
	Side molding.SlopedSide `json:"side"`
	// FrontSight is the sight edge, FrontRim the rim, in front; BackSight and BackRim
	// the edges behind them; see [molding.SlopedRail].
	FrontSight Figure `json:"front_sight"`
	FrontRim   Figure `json:"front_rim"`
	BackSight  Figure `json:"back_sight"`
	BackRim    Figure `json:"back_rim"`
	// Depth is how much deeper the sight edge lies than the rim, Run how wide the side
	// looks.
	Depth Figure `json:"depth"`
	Run   Figure `json:"run"`
	// Left and Right are its two ends, seen from the front.
	Left  SlopeEndPlan `json:"left"`
	Right SlopeEndPlan `json:"right"`
}

// A SlopeEndPlan is how one end of a sloped side is cut, in each way to lay the board.
type SlopeEndPlan struct {
	Corner  molding.SlopedCorner `json:"corner"`
	Flat    SettingPlan          `json:"flat"`
	OnEdge  SettingPlan          `json:"on_edge"`
	Propped SettingPlan          `json:"propped"`
	// Dihedral is the angle between the two fronts.
	Dihedral AngleFigure `json:"dihedral"`
}

// A SettingPlan is how the saw is set for one end in one way to lay the board.
type SettingPlan struct {
	Miter AngleFigure `json:"miter"`
	Tilt  AngleFigure `json:"tilt"`
	// Nearest are the settings to whole, half and quarter degrees.
	Nearest []NearestPlan `json:"nearest"`
}

// A NearestPlan is a setting that the saw's scales have, and the widest gap that it
// leaves where both boards are cut so.
type NearestPlan struct {
	Step    measure.Angle   `json:"step"`
	Setting molding.Setting `json:"setting"`
	Gap     measure.Length  `json:"gap"`
}

// A LastPlan is how the last joint of a regular frame comes out; see
// [molding.LastJoint].
type LastPlan struct {
	Turn  AngleFigure `json:"turn"`
	Joint Figure      `json:"joint"`
	Miss  Figure      `json:"miss"`
	Wedge Figure      `json:"wedge"`
	// Opens is the end at which it stands open.
	Opens molding.End `json:"opens"`
}

// widest is the widest gap of a joint, wherever it stands open.
func widest(g molding.Gap) measure.Length { return max(g.Heel, g.Toe, g.Front, g.Back) }
