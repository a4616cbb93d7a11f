package browser

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"
)

func sleep() { time.Sleep(100 * time.Millisecond) }

func startChromium(o Options, cleanup func() error) (transport, error) {
	port, err := freePort()
	if err != nil {
		return nil, err
	}
	driver, err := start(nil, find(programs[Chromium][0]), fmt.Sprint("--port=", port))
	if err != nil {
		return nil, err
	}
	args := []string{
		"--headless=new", "--no-sandbox", "--user-data-dir=" + o.Profile,
		"--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-default-apps",
		"--disable-extensions", "--no-first-run", "--disable-features=OptimizationHints,MediaRouter,Translate",
		"--hide-scrollbars", "--force-color-profile=srgb",
	}
	if o.Proxy != "" {
		args = append(args, "--proxy-server="+o.Proxy)
	}
	if o.Still {
		args = append(args, "--force-prefers-reduced-motion")
	}
	var looks []string
	if o.Dark {
		looks = append(looks, "preferredColorScheme=0")
	}
	if o.Contrast {
		looks = append(looks, "preferredContrast=0")
	}
	if looks != nil { // of this flag only the last one counts
		args = append(args, "--blink-settings="+strings.Join(looks, ","))
	}
	d := &webdriver{driver: driver, cleanup: cleanup}
	options := map[string]any{"binary": find(programs[Chromium][1]), "args": args}
	if o.Mobile {
		options["mobileEmulation"] = map[string]any{
			"deviceMetrics": map[string]any{"width": o.Width, "height": o.Height, "pixelRatio": 2, "touch": true, "mobile": true},
		}
	}
	return d, d.connect("http://"+address(port), map[string]any{"browserName": "chrome", "goog:chromeOptions": options})
}

func startWebKit(o Options, cleanup func() error) (transport, error) {
	port, err := freePort()
	if err != nil {
		return nil, err
	}
	// Its home keeps the machine's own from being written to.
	env := []string{"HOME=" + o.Profile, "XDG_CACHE_HOME=", "XDG_DATA_HOME=", "XDG_CONFIG_HOME="}
	if o.Proxy != "" {
		env = append(env, "http_proxy=http://"+o.Proxy, "https_proxy=http://"+o.Proxy, "no_proxy=127.0.0.1,localhost")
	}
	driver, err := start(env, find(programs[WebKit][1]), "-a", "-s", "-screen 0 1600x1400x24",
		find(programs[WebKit][0]), fmt.Sprint("--port=", port))
	if err != nil {
		return nil, err
	}
	d := &webdriver{driver: driver, cleanup: cleanup}
	return d, d.connect("http://"+address(port), map[string]any{
		"browserName":              "MiniBrowser",
		"webkitgtk:browserOptions": map[string]any{"binary": find(programs[WebKit][2]), "args": []string{"--automation"}},
	})
}

// settings are what a Firefox must not do by itself during a test.
const settings = `user_pref("remote.prefs.recommended", true);
user_pref("app.normandy.enabled", false);
user_pref("network.captive-portal-service.enabled", false);
user_pref("network.connectivity-service.enabled", false);
user_pref("datareporting.healthreport.uploadEnabled", false);
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("toolkit.telemetry.server", "");
user_pref("services.settings.server", "data:,#remote-settings-dummy/v1");
user_pref("browser.safebrowsing.update.enabled", false);
user_pref("extensions.getAddons.cache.enabled", false);
user_pref("network.dns.disablePrefetch", true);
user_pref("browser.search.update", false);
user_pref("browser.startup.homepage_override.mstone", "ignore");
`

func startFirefox(o Options, cleanup func() error) (transport, error) {
	port, err := freePort()
	if err != nil {
		return nil, err
	}
	prefs := settings + fmt.Sprintf("user_pref(\"marionette.port\", %d);\n", port)
	if o.Proxy != "" {
		host, proxyPort, _ := strings.Cut(o.Proxy, ":")
		prefs += "user_pref(\"network.proxy.type\", 1);\n"
		for _, kind := range []string{"http", "ssl"} {
			prefs += fmt.Sprintf("user_pref(\"network.proxy.%s\", %q);\nuser_pref(\"network.proxy.%[1]s_port\", %[3]s);\n", kind, host, proxyPort)
		}
	}
	if o.Dark {
		prefs += "user_pref(\"layout.css.prefers-color-scheme.content-override\", 0);\n"
	}
	if o.Contrast {
		prefs += "user_pref(\"layout.css.prefers-contrast.enabled\", true);\nuser_pref(\"ui.prefersContrast\", 1);\n"
	}
	if o.Still {
		prefs += "user_pref(\"ui.prefersReducedMotion\", 1);\n"
	}
	if err := os.WriteFile(filepath.Join(o.Profile, "user.js"), []byte(prefs), 0o644); err != nil {
		return nil, err
	}
	firefox, err := start([]string{"HOME=" + o.Profile, "MOZ_CRASHREPORTER_DISABLE=1"}, find(programs[Firefox][0]),
		"--headless", "--marionette", "--no-remote", "--profile", o.Profile)
	if err != nil {
		return nil, err
	}
	m := &marionette{firefox: firefox, cleanup: cleanup}
	return m, m.connect(address(port), map[string]any{})
}
