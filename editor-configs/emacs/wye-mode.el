;;; wye-mode.el --- Major mode for Wyeline models  -*- lexical-binding: t; coding: utf-8 -*-

;; Package-Requires: ((emacs "29.1"))

;;; Commentary:
;; Colours, comments and the language server of Wyeline (*.wye).  Put this folder on the `load-path' and
;;
;;   (require 'wye-mode)
;;
;; The server starts with `M-x eglot', or by itself with (add-hook 'wye-mode-hook #'eglot-ensure).

;;; Code:

(require 'wye-highlighting)

(defgroup wye nil
  "Wyeline models: power distribution as text."
  :group 'languages)

(defcustom wye-server-command nil
  "The language server: a list of program and arguments.
When nil, the server is looked for in the project's virtual environment (.venv, venv), then on the PATH."
  :type '(choice (const :tag "Look for it" nil) (repeat string))
  :risky t)

(defvar wye-mode-syntax-table
  (let ((table (make-syntax-table)))
    ;; What is inside a word: its bounds are then a symbol's bounds.
    (dolist (character (append "-.#%_²×°·Ω" nil))
      (modify-syntax-entry character "_" table))
    (modify-syntax-entry ?/ "_ 12" table)
    (modify-syntax-entry ?\n ">" table)
    (modify-syntax-entry ?\" "\"" table)
    (modify-syntax-entry ?\\ "." table)
    (modify-syntax-entry ?\u00a0 "-" table)
    (dolist (character (append "+<>=:,≤≥→" nil))
      (modify-syntax-entry character "." table))
    table)
  "Syntax of `wye-mode'.")

(defun wye--syntax-propertize (start end)
  "Between START and END, part an arrow from the name before it, and let no text span lines."
  (goto-char start)
  (while (search-forward "->" end t)
    (put-text-property (match-beginning 0) (match-end 0) 'syntax-table (string-to-syntax ".")))
  (goto-char start)
  (while (re-search-forward "\"[^\"\n]*\\(\"\\)?" end t)
    (unless (match-beginning 1)
      (put-text-property (match-beginning 0) (1+ (match-beginning 0)) 'syntax-table (string-to-syntax ".")))))

(defun wye--syntactic-face (state)
  "The face of a text or comment, by the parser's STATE: three strokes document."
  (cond ((nth 3 state) 'font-lock-string-face)
        ((save-excursion (goto-char (nth 8 state)) (looking-at-p "///")) 'font-lock-doc-face)
        (t 'font-lock-comment-face)))

(defun wye--complete-words ()
  "Complete the words of the language, for when no server runs."
  (let ((bounds (bounds-of-thing-at-point 'symbol)))
    (when bounds
      (list (car bounds) (cdr bounds)
            (append wye-statement-words wye-kind-words wye-key-words wye-flag-words wye-action-words wye-link-words)
            :exclusive 'no))))

;;;###autoload
(define-derived-mode wye-mode prog-mode "Wye"
  "Major mode for Wyeline models."
  (setq-local comment-start "// ")
  (setq-local comment-start-skip "///?[ \t]*")
  (setq-local comment-end "")
  (setq-local indent-tabs-mode nil)
  (setq-local indent-line-function #'wye-indent-line)
  (setq-local syntax-propertize-function #'wye--syntax-propertize)
  (setq-local font-lock-defaults
              '(wye-font-lock-keywords nil nil nil (font-lock-syntactic-face-function . wye--syntactic-face)))
  (setq-local imenu-generic-expression
              (list (list nil (concat "^\\(?:type[ \t]+\\)?" (regexp-opt wye-kind-words 'symbols)
                                      "[ \t]+\\([^ \t\n,]+\\)") 2)))
  (add-hook 'completion-at-point-functions #'wye--complete-words 90 t))

(defun wye-indent-line ()
  "Indent as the line above; a second time, start a statement in the first column."
  (interactive)
  (let* ((above (save-excursion
                  (beginning-of-line)
                  (skip-chars-backward " \t\n")
                  (current-indentation)))
         (target (cond ((and (eq last-command this-command) (> (current-indentation) 0)) 0)
                       ((> above 0) above)
                       (t 2))))
    (if (<= (current-column) (current-indentation))
        (indent-line-to target)
      (save-excursion (indent-line-to target)))))

(defun wye-server-contact (&optional _interactive project)
  "The command that starts the language server of PROJECT."
  (or wye-server-command
      (let ((root (if project (project-root project) default-directory)))
        (seq-some (lambda (place)
                    (let ((program (expand-file-name place root)))
                      (and (file-executable-p program) (list program))))
                  '(".venv/bin/wyeline-server" "venv/bin/wyeline-server"
                    ".venv/Scripts/wyeline-server.exe" "venv/Scripts/wyeline-server.exe")))
      (and (executable-find "wyeline-server") '("wyeline-server"))
      (user-error "No wyeline-server in .venv, venv or on the PATH.  Install it with: pip install /path/to/wyeline")))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.wye\\'" . wye-mode))

(with-eval-after-load 'eglot
  (defvar eglot-server-programs)
  (add-to-list 'eglot-server-programs '(wye-mode . wye-server-contact)))

(provide 'wye-mode)
;;; wye-mode.el ends here
