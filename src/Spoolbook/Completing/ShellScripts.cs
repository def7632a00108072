using System.Collections.Immutable;

namespace Spoolbook.Completing;

/// <summary>
/// What a shell needs to complete the command: a few lines that ask the program itself what fits, so that they stay right when it learns
/// something new.
/// </summary>
internal static class ShellScripts
{
    const string Bash = """
        # Completes the command spoolbook in bash. In ~/.bashrc: eval "$(spoolbook completion bash)"
        _spoolbook() {
            local word about current="${COMP_WORDS[COMP_CWORD]}" before="${COMP_WORDS[COMP_CWORD-1]}"
            COMPREPLY=()
            while IFS=$'\t' read -r word about; do
                if [[ $word == :files ]]; then
                    compopt -o default 2>/dev/null
                    continue
                fi
                # bash breaks a word at '=', and completes what is behind it.
                [[ $current == '=' || $before == '=' ]] && word="${word#*=}"
                COMPREPLY+=("$(printf %q "$word")")
            done < <("${COMP_WORDS[0]}" complete -- "${COMP_WORDS[@]:1:COMP_CWORD}" 2>/dev/null)
        }
        complete -F _spoolbook spoolbook

        """;

    const string Zsh = """
        #compdef spoolbook
        # Completes the command spoolbook in zsh. In ~/.zshrc, after compinit: eval "$(spoolbook completion zsh)"
        _spoolbook() {
            local -a found
            local word about files
            while IFS=$'\t' read -r word about; do
                if [[ $word == :files ]]; then
                    files=1
                else
                    found+=("${word//:/\\:}:$about")
                fi
            done < <("${words[1]}" complete -- "${(@Q)words[2,CURRENT]}" 2>/dev/null)
            (( $#found )) && _describe -V spoolbook found
            [[ -n $files ]] && _files
            return 0
        }
        if [[ ${funcstack[1]} == _spoolbook ]]; then
            _spoolbook "$@"
        else
            compdef _spoolbook spoolbook
        fi

        """;

    const string Fish = """
        # Completes the command spoolbook in fish: spoolbook completion fish > ~/.config/fish/completions/spoolbook.fish
        function __spoolbook_offers
            set -l typed (commandline -opc)
            set -l current (commandline -ct)
            set -l offers ($typed[1] complete -- $typed[2..-1] "$current" 2>/dev/null)
            for offer in $offers
                if test "$offer" = :files
                    __fish_complete_path "$current"
                else
                    echo $offer
                end
            end
        end
        complete -c spoolbook -f -a '(__spoolbook_offers)'

        """;

    const string PowerShell = """
        # Completes the command spoolbook in PowerShell. In $PROFILE: spoolbook completion powershell | Out-String | Invoke-Expression
        Register-ArgumentCompleter -Native -CommandName spoolbook -ScriptBlock {
            param($wordToComplete, $commandAst, $cursorPosition)
            $typed = @($commandAst.CommandElements | Select-Object -Skip 1 |
                Where-Object { $_.Extent.EndOffset -lt $cursorPosition } | ForEach-Object { "$_" })
            # An empty word would not arrive at all.
            $current = if ("$wordToComplete") { "$wordToComplete" } else { '""' }
            & spoolbook complete '--' @typed $current 2>$null | ForEach-Object {
                $word, $about = $_ -split "`t", 2
                if ($word -ne ':files') {
                    $tip = if ($about) { $about } else { $word }
                    [System.Management.Automation.CompletionResult]::new($word, $word, 'ParameterValue', $tip)
                }
            }
        }

        """;

    static readonly ImmutableArray<(string Shell, string Script)> _all =
    [
        ("bash", Bash),
        ("zsh", Zsh),
        ("fish", Fish),
        ("powershell", PowerShell),
    ];

    /// <summary>The shells that there is a script for.</summary>
    public static ImmutableArray<string> Shells { get; } = [.. _all.Select(s => s.Shell)];

    /// <summary>The script of one of them, with line ends of a single character.</summary>
    public static string Of(string shell) => _all.First(s => s.Shell == shell).Script.ReplaceLineEndings("\n");
}
