package plane

// PerimeterFloat is the float that a perimeter is rounded from.
var PerimeterFloat = perimeter
