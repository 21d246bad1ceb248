;;; downlead-mode.el --- Major mode for .downlead files  -*- lexical-binding: t; -*-

;; Version: 0.1.0
;; Package-Requires: ((emacs "27.1"))
;; Keywords: languages
;; SPDX-License-Identifier: MIT OR Apache-2.0

;;; Commentary:

;; Colours, indentation and an index for .downlead files, and the entry that lets Eglot (or
;; lsp-mode) start `downlead lsp'.  The lists of words come from the program's own tables.

;;; Code:

(eval-when-compile (require 'cl-lib))
(require 'url-util)

(defgroup downlead nil
  "Feed lines, powers and limits of a station."
  :group 'languages
  :prefix "downlead-")

(defcustom downlead-indent-offset 4
  "Columns of one step of indentation."
  :type 'integer
  :safe #'integerp)

(defcustom downlead-server-command '("downlead" "lsp")
  "Program and arguments of the language server."
  :type '(repeat string)
  :risky t)

(defcustom downlead-hints
  '(:loss t :power t :radiated t :limits t :readings t :cables t :bands []
           :aligned :json-false)
  "Which hints the server shows beside the lines.
Each kind is t or :json-false; `:bands' is a vector of band names,
empty for all bands."
  :type 'plist)

(defcustom downlead-swatches :json-false
  "Whether the server gives a swatch at what it judges, t or :json-false.
Blue: met or agrees; orange: cannot tell; dark red: not met or differs."
  :type '(choice (const :tag "Yes" t) (const :tag "No" :json-false)))

;; BEGIN generated: lists
(defconst downlead--definition-keywords
  '(
    "accept" "band" "cable" "chain" "connector" "device" "instrument" "let" "licence"
    "link" "rules" "session" "station" "use" "variant")
  "Statement keywords: definition.")

(defconst downlead--part-keywords
  '(
    "adapter" "amplifier" "antenna" "balun" "circulator" "combiner" "coupler" "diplexer"
    "divider" "duplexer" "filter" "isolator" "jumper" "load" "meter" "pad" "preamplifier"
    "protector" "receiver" "run" "switch" "tail" "transceiver" "transmitter" "tuner")
  "Statement keywords: part.")

(defconst downlead--chain-keywords
  '(
    "branch" "branches" "expect" "limit" "read" "readings")
  "Statement keywords: chain.")

(defconst downlead--property-keywords
  '(
    "accuracy" "alone" "ask" "authority" "bandwidth" "baseline" "beside" "blocking"
    "braid" "bump" "calibrated" "certificate" "class" "condition" "conductor"
    "construction" "coupled" "coverage" "dated" "delay" "diameter" "directivity"
    "distance" "drift" "due" "duty" "edition" "efficiency" "equalise" "excess" "fails"
    "family" "field" "fixed" "foldback" "from" "gain" "generator" "ground" "haat" "height"
    "high" "holder" "hop" "impedance" "inner" "inner-resistivity" "isolation" "joins"
    "jurisdiction" "k-factor" "keyed" "kind" "linearity" "loss" "loss-tangent" "low"
    "mode" "model" "need" "noise" "open" "outer" "outer-resistivity" "passes" "pattern"
    "permittivity" "phase" "piece" "place" "port" "position" "power" "profile" "put"
    "radius" "rating" "ratio" "recalled" "receive" "reflection" "repeatability"
    "resistivity" "resolution" "resonance" "return-loss" "reversed" "scale" "sensitivity"
    "service" "short" "site-noise" "size" "source" "spacing" "split" "spot" "strand"
    "strand-diameter" "swr" "take" "tee" "temperature" "threshold" "through" "transmit"
    "under" "until" "valid" "velocity" "voltage" "ways" "wires")
  "Statement keywords: property.")

(defconst downlead--words
  '(
    "GHz" "Hz" "MHz" "above" "accept" "accuracy" "adapter" "added" "after" "against" "agl"
    "allocated" "alone" "am" "ambient" "amplifier" "amsl" "antenna" "apart" "ask" "at"
    "authority" "averaging" "balun" "band" "bandwidth" "baseline" "below" "beside"
    "beyond" "blank" "blocking" "bow" "braid" "branch" "branches" "bullington" "bump" "by"
    "cable" "calibrated" "carrier" "cascade" "certificate" "chain" "circulator" "city"
    "clad" "class" "combiner" "condition" "conductor" "confidence" "connector"
    "construction" "corrected" "coupled" "coupler" "coverage" "cw" "dB" "dBW" "dBd" "dBi"
    "dBm" "data" "date" "dated" "datum" "dc-input" "degrees" "delay" "delivered" "desense"
    "device" "diameter" "diplexer" "directivity" "displayed" "distance" "divider" "dms"
    "down" "drift" "due" "duplexer" "duty" "edition" "efficiency" "eirp" "elevation"
    "ends" "equalise" "erp" "etrs89" "excess" "expect" "fails" "family" "field" "figure"
    "filter" "fixed" "fm" "foldback" "for" "forward" "free-space" "frequency" "from" "ft"
    "full" "gain" "generator" "ground" "guess" "haat" "hata-open" "hata-suburban"
    "hata-urban" "height" "height-amsl" "high" "holder" "hop" "horizontal" "if"
    "impedance" "in" "inner" "inner-resistivity" "input" "instead" "instrument"
    "isolation" "isolator" "joins" "jumper" "jurisdiction" "k" "k-factor" "kHz" "kW"
    "keyed" "kind" "km" "latitude" "let" "licence" "limit" "linearity" "link" "load"
    "longitude" "loss" "loss-tangent" "low" "m" "mW" "maximum" "mean" "medium" "meter"
    "mode" "model" "nad27" "nad83" "need" "net" "no" "noise" "nominal" "occupational" "of"
    "offset" "on" "one-edge" "open" "out" "outer" "outer-resistivity" "output" "over"
    "pad" "passes" "pattern" "pep" "per" "permittivity" "phase" "piece" "place" "places"
    "port" "position" "power" "preamplifier" "profile" "protector" "public" "put"
    "quiet-rural" "quieting" "radius" "rated" "rating" "ratio" "reactance" "read"
    "reading" "readings" "realized" "recalled" "receive" "receive-frequency"
    "receive-loss" "receiver" "reference" "reflected" "reflection" "rejects"
    "repeatability" "residential" "resistivity" "resolution" "resonance" "return-loss"
    "reversed" "rules" "run" "rural" "scale" "sensitivity" "series" "service" "session"
    "shared" "sheet" "short" "shunt" "sinad" "since" "site-noise" "size" "snr" "source"
    "spacing" "split" "spot" "spread" "ssb" "ssb-processed" "station" "strand"
    "strand-diameter" "switch" "swr" "tail" "take" "tee" "temperature" "then" "threshold"
    "through" "title" "to" "total" "transceiver" "transmit" "transmit-frequency"
    "transmitter" "tuner" "two-ray" "typical" "under" "until" "up" "use" "valid" "variant"
    "velocity" "vertical" "voltage" "way" "ways" "wet" "wgs84" "wires" "with" "within"
    "yes")
  "Words with a meaning inside a statement.")

(defconst downlead--units
  '(
    "dB/100 ft/sqrt(MHz)" "dB/100 m/sqrt(MHz)" "dB/100 ft/√MHz" "dB/100 ft/MHz"
    "dB/100 m/√MHz" "dB/100 m/MHz" "wavelengths" "wavelength" "dB/100 ft" "dB/100 m"
    "dBc/Hz" "mW/cm2" "dB/ft" "dB/km" "ohm-m" "pF/ft" "W/m2" "dB/m" "degC" "degF" "ohms"
    "pF/m" "A/m" "GHz" "MHz" "V/m" "dBW" "dBd" "dBi" "dBm" "deg" "kHz" "min" "ohm" "Hz"
    "cm" "dB" "ft" "in" "kV" "kW" "km" "mW" "mi" "mm" "ms" "ns" "uV" "uW" "us" "yd" "°C"
    "°F" "µV" "µW" "µs" "Ωm" "μV" "μW" "μs" "Ωm" "%" "A" "V" "W" "h" "m" "s" "°" "Ω" "λ"
    "Ω")
  "Spellings of units.")
;; END generated: lists

(defvar downlead-mode-syntax-table
  (let ((table (make-syntax-table)))
    (modify-syntax-entry ?/ ". 12" table)
    (modify-syntax-entry ?\n ">" table)
    (modify-syntax-entry ?\" "\"" table)
    (modify-syntax-entry ?\\ "." table)
    (modify-syntax-entry ?' "." table)
    (dolist (char '(?- ?. ?_ ?° ?µ ?μ ?Ω ?\u2126 ?λ))
      (modify-syntax-entry char "_" table))
    (dolist (char '(?+ ?* ?= ?% ?, ?\; ?±))
      (modify-syntax-entry char "." table))
    table)
  "Syntax table of `downlead-mode'.")

(defconst downlead--number "-?[0-9]+\\(?:\\.[0-9]+\\)?\\(?::[0-9]+\\(?:\\.[0-9]+\\)?\\|[eE][+-]?[0-9]+\\)?")

(defun downlead--unit-regexp ()
  "A pattern of all units, with free blanks around a slash."
  (let (words)
    (dolist (unit downlead--units)
      (unless (equal unit "%")
        (push (concat (replace-regexp-in-string
                       "/\\(100 \\)?"
                       (lambda (part) (if (equal part "/") "[ \t]*/[ \t]*" "[ \t]*/[ \t]*100[ \t]*"))
                       (regexp-quote unit) t t)
                      ;; `\_>' finds no end after a parenthesis
                      (if (string-suffix-p ")" unit) "" "\\_>"))
              words)))
    (concat "\\(?:" (mapconcat #'identity (nreverse words) "\\|") "\\|%\\)")))

(defvar downlead-font-lock-keywords
  (let ((start "\\(?:^\\|[{};]\\)[ \t]*")
        (unit (downlead--unit-regexp)))
    (cl-flet ((statement (words face)
                (list (concat start (regexp-opt words "\\(") "\\_>") 1 face)))
      (list
       (statement downlead--definition-keywords ''font-lock-keyword-face)
       (statement downlead--part-keywords ''font-lock-type-face)
       (statement downlead--chain-keywords ''font-lock-keyword-face)
       (statement downlead--property-keywords ''font-lock-variable-name-face)
       ;; a name at the start of a statement is a tag
       (list (concat start "\\_<\\(\\(?:\\w\\|\\s_\\)+\\)\\_>") 1 ''font-lock-constant-face)
       (list "\\_<[0-9]\\{4\\}-[0-9][0-9]\\(?:-[0-9][0-9]\\)?\\_>" 0 ''font-lock-constant-face)
       (list "\\_<[0-9]+° ?[0-9]+\\(?:\\.[0-9]+\\)?′\\(?: ?[0-9]+\\(?:\\.[0-9]+\\)?″\\)?" 0 ''font-lock-constant-face)
       (list (concat "\\_<\\(" downlead--number "\\)[ \t]*\\(" unit "\\)")
             '(1 'font-lock-constant-face) '(2 'font-lock-builtin-face))
       (list (concat "\\_<" downlead--number "\\_>") 0 ''font-lock-constant-face)
       (list "\\_<per\\_>[ \t]+\\(sqrt([A-Za-z]+)\\|√[A-Za-z]+\\)" 1 ''font-lock-builtin-face)
       (list (regexp-opt downlead--words 'symbols) 0 ''font-lock-preprocessor-face))))
  "What `downlead-mode' colours.")

(defun downlead-indent-line ()
  "Indent the line by the braces open before it."
  (interactive)
  (let* ((closing (save-excursion (back-to-indentation) (eq (char-after) ?})))
         (open (save-excursion (nth 0 (syntax-ppss (line-beginning-position)))))
         (depth (if closing (1- open) open))
         (column (* downlead-indent-offset (max 0 depth))))
    (if (<= (current-column) (current-indentation))
        (indent-line-to column)
      (save-excursion (indent-line-to column)))))

(defvar downlead-imenu-expression
  `(("Chains" "^[ \t]+chain[ \t]+\\(\\(?:\\w\\|\\s_\\)+\\)" 1)
    (nil ,(concat "^" (regexp-opt (remove "use" downlead--definition-keywords))
                  "[ \t]+\\(\\(?:\\w\\|\\s_\\)+\\)") 1))
  "Index of a file for `imenu'.")

;;;###autoload
(define-derived-mode downlead-mode prog-mode "Downlead"
  "Major mode for .downlead files: stations and their feed lines."
  (setq-local comment-start "// ")
  (setq-local comment-end "")
  (setq-local comment-start-skip "//+[ \t]*")
  (setq-local indent-tabs-mode nil)
  (setq-local indent-line-function #'downlead-indent-line)
  (setq-local electric-indent-chars (append '(?}) electric-indent-chars))
  (setq-local imenu-generic-expression downlead-imenu-expression)
  (setq-local font-lock-defaults '(downlead-font-lock-keywords)))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.downlead\\'" . downlead-mode))

(defun downlead--contact (&rest _)
  "Command of the server, for Eglot."
  downlead-server-command)

(defvar eglot-server-programs)
(defvar eglot-workspace-configuration)

(with-eval-after-load 'eglot
  (add-to-list 'eglot-server-programs '(downlead-mode . downlead--contact))
  (add-hook 'downlead-mode-hook #'downlead--configure-eglot))

(defvar eglot-inlay-hints-mode)
(declare-function jit-lock-refontify "jit-lock")

(defun downlead--fresh-hints ()
  "Have Eglot ask for all hints again.
It does not for lines that are typed at the end of the buffer."
  (when (bound-and-true-p eglot-inlay-hints-mode)
    (jit-lock-refontify)))

(defun downlead--configure-eglot ()
  "Hand `downlead-hints' and `downlead-swatches' to the server."
  (setq-local eglot-workspace-configuration
              `(:downlead (:hints ,downlead-hints :swatches ,downlead-swatches)))
  (add-hook 'after-save-hook #'downlead--fresh-hints nil t))

(declare-function eglot-current-server "eglot")
(declare-function jsonrpc-request "jsonrpc")

(defun downlead--beside (buffer command &rest fields)
  "Show in BUFFER what the server's COMMAND gives for the current file with FIELDS."
  (let* ((server (or (and (fboundp 'eglot-current-server) (eglot-current-server))
                     (user-error "No server: start it with M-x eglot")))
         (uri (concat "file://" (mapconcat #'url-hexify-string (split-string (buffer-file-name) "/") "/")))
         (answer (jsonrpc-request server :workspace/executeCommand
                                  `(:command ,command :arguments [(:uri ,uri ,@fields)]))))
    (with-current-buffer (get-buffer-create buffer)
      (let ((inhibit-read-only t))
        (erase-buffer)
        (insert (if (stringp answer) answer (or (plist-get answer :text) ""))))
      (goto-char (point-min))
      (special-mode)
      ;; rows of tables stay rows
      (setq truncate-lines t)
      (display-buffer (current-buffer)))))

(defun downlead-report ()
  "Show the report of the current file beside it."
  (interactive)
  (downlead--beside "*downlead report*" "downlead.report"))

(defun downlead-compare (revision)
  "Show what the change of the current file since REVISION means on the air."
  (interactive (list (read-string "Compare with revision: " "HEAD")))
  (downlead--beside "*downlead compare*" "downlead.compare" :revision revision))

(declare-function lsp-register-client "lsp-mode")
(declare-function make-lsp-client "lsp-mode")
(declare-function lsp-stdio-connection "lsp-mode")
(declare-function lsp-activate-on "lsp-mode")
(defvar lsp-language-id-configuration)

(with-eval-after-load 'lsp-mode
  (add-to-list 'lsp-language-id-configuration '(downlead-mode . "downlead"))
  (lsp-register-client
   (make-lsp-client :new-connection (lsp-stdio-connection (lambda () downlead-server-command))
                    :activation-fn (lsp-activate-on "downlead")
                    :initialization-options (lambda () `(:downlead (:hints ,downlead-hints :swatches ,downlead-swatches)))
                    :server-id 'downlead)))

(provide 'downlead-mode)
;;; downlead-mode.el ends here
