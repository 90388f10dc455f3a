# Completion of vivary for bash. For this shell: source <(vivary completion bash)
# For all: vivary completion bash >~/.local/share/bash-completion/completions/vivary
_vivary() {
    local word=${COMP_WORDS[COMP_CWORD]} name about
    [[ $word != = ]] || word=
    COMPREPLY=()
    while IFS=$'\t' read -r name about; do
        case $name in
        :folders | :files)
            compopt -o filenames 2>/dev/null
            [[ $name == :files ]] && about=-f || about=-d
            while IFS= read -r name; do COMPREPLY+=("$name"); done < <(compgen "$about" -- "$word")
            ;;
        *[!A-Za-z0-9_.,/=@+-]*) COMPREPLY+=("$(printf %q "$name")") ;;
        *) COMPREPLY+=("$name") ;;
        esac
    done < <("${COMP_WORDS[0]/#\~\//$HOME/}" __complete "${COMP_WORDS[@]:1:COMP_CWORD}" 2>/dev/null)
}
complete -F _vivary vivary
