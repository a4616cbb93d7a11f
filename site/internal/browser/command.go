package browser

// A command is one of W3C WebDriver (https://www.w3.org/TR/webdriver2/, 6.6): as
// a method and a path over HTTP, {id} standing for an element, and by its name in
// Marionette.
type command struct {
	name, method, path string
	marionette         string
	// wrapped is whether Marionette answers with the value in an object.
	wrapped bool
}

var (
	newSession   = command{"new session", "POST", "", "WebDriver:NewSession", false}
	setTimeouts  = command{"set timeouts", "POST", "/timeouts", "WebDriver:SetTimeouts", false}
	navigate     = command{"navigate", "POST", "/url", "WebDriver:Navigate", true}
	back         = command{"back", "POST", "/back", "WebDriver:Back", true}
	execute      = command{"evaluate", "POST", "/execute/sync", "WebDriver:ExecuteScript", true}
	executeAsync = command{"evaluate later", "POST", "/execute/async", "WebDriver:ExecuteAsyncScript", true}
	findElement  = command{"find", "POST", "/element", "WebDriver:FindElement", true}
	clickElement = command{"click", "POST", "/element/{id}/click", "WebDriver:ElementClick", true}
	typeKeys     = command{"type", "POST", "/element/{id}/value", "WebDriver:ElementSendKeys", true}
	windowRect   = command{"resize", "POST", "/window/rect", "WebDriver:SetWindowRect", false}
	screenshot   = command{"screenshot", "GET", "/screenshot", "WebDriver:TakeScreenshot", true}
	deleteAll    = command{"end session", "DELETE", "", "Marionette:Quit", false}
	chromium     = command{"devtools", "POST", "/goog/cdp/execute", "", false}
)
