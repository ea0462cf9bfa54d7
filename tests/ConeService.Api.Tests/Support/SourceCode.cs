using System.Collections.Concurrent;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace ConeService.Api.Tests.Support;

/// <summary>The service's own source as the compiler understands it: which values reach a parameter.</summary>
internal sealed class SourceCode
{
    private const string AnyType = "new";

    private static readonly string[] Generated = ["obj", "bin"];

    // What the project files import, so that names mean here what they mean there.
    private const string Imports = """
        global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq;
        global using System.Net.Http; global using System.Net.Http.Json; global using System.Threading; global using System.Threading.Tasks;
        global using Microsoft.AspNetCore.Builder; global using Microsoft.AspNetCore.Hosting; global using Microsoft.AspNetCore.Http;
        global using Microsoft.AspNetCore.Routing; global using Microsoft.Extensions.Configuration;
        global using Microsoft.Extensions.DependencyInjection; global using Microsoft.Extensions.Hosting;
        global using Microsoft.Extensions.Logging;
        """;

    private readonly CSharpCompilation compilation;
    private readonly ConcurrentDictionary<SyntaxTree, SemanticModel> models = new();
    private readonly ILookup<string, SyntaxNode> byName;

    /// <summary>Reads sources; nothing is compiled, and what generators would add is not there.</summary>
    /// <param name="sources">Texts by file name.</param>
    public SourceCode(IEnumerable<(string File, string Text)> sources)
    {
        var options = CSharpParseOptions.Default.WithLanguageVersion(LanguageVersion.Preview);
        var trees = sources.Prepend(("Imports.cs", Imports)).Select(s => CSharpSyntaxTree.ParseText(s.Item2, options, s.Item1)).ToList();
        // The packages and the framework that the tests run with, without the service's own assemblies.
        var references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(p => !Path.GetFileName(p).StartsWith("ConeService.", StringComparison.Ordinal))
            .Select(p => MetadataReference.CreateFromFile(p));
        compilation = CSharpCompilation.Create(
            "Read", trees, references, new(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable));
        byName = trees.SelectMany(t => t.GetRoot().DescendantNodes()).SelectMany(n => Names(n).Select(name => (name, n)))
            .ToLookup(x => x.name, x => x.n, StringComparer.Ordinal);
    }

    /// <summary>All that the service is made of; a client reads back what the service said.</summary>
    public static SourceCode OfTheService() => new(Directory
        .EnumerateDirectories(Path.Combine(Repository.Root, "src"))
        .Where(d => Path.GetFileName(d) != "ConeService.Client")
        .SelectMany(d => Directory.EnumerateFiles(d, "*.cs", SearchOption.AllDirectories))
        .Where(f => !f.Split(Path.DirectorySeparatorChar).Any(Generated.Contains))
        .Select(f => (Path.GetRelativePath(Repository.Root, f), File.ReadAllText(f))));

    /// <summary>A parameter of a constructor of a type.</summary>
    public IParameterSymbol Parameter(string type, string name) => compilation.GetTypeByMetadataName(type)!.InstanceConstructors
        .SelectMany(c => c.Parameters).Single(p => p.Name == name);

    /// <summary>
    /// Every constant that can reach a parameter, followed through parameters, fields, locals and branches; and every place
    /// whose value can't be told.
    /// </summary>
    public (IReadOnlySet<string> Constants, IReadOnlyList<string> Unknown) Reaching(IParameterSymbol parameter)
    {
        var constants = new SortedSet<string>(StringComparer.Ordinal);
        var unknown = new List<string>();
        var seen = new HashSet<ISymbol>(SymbolEqualityComparer.Default);
        Follow(parameter);
        // A record's member may be given another value where it is copied.
        foreach (var member in parameter.ContainingType.GetMembers(parameter.Name).OfType<IPropertySymbol>()) Follow(member);
        return (constants, unknown);

        void Follow(ISymbol symbol)
        {
            if (!seen.Add(symbol)) return;
            foreach (var value in symbol is IParameterSymbol p ? Arguments(p) : Stored(symbol)) Value(value);
        }

        void Value(IOperation value)
        {
            switch (value)
            {
                case { ConstantValue: { HasValue: true, Value: string text } }: constants.Add(text); break;
                case IConversionOperation conversion: Value(conversion.Operand); break;
                case IConditionalOperation either: Value(either.WhenTrue); Value(either.WhenFalse!); break;
                case ICoalesceOperation either: Value(either.Value); Value(either.WhenNull); break;
                case ISwitchExpressionOperation many: foreach (var arm in many.Arms) Value(arm.Value); break;
                case IThrowOperation: break;
                case IParameterReferenceOperation p: Follow(p.Parameter.OriginalDefinition); break;
                case IFieldReferenceOperation f: Follow(f.Field.OriginalDefinition); break;
                case ILocalReferenceOperation l: Follow(l.Local); break;
                // A copy of what another one of the same kind already has.
                case IPropertyReferenceOperation copy
                    when SymbolEqualityComparer.Default.Equals(copy.Property.ContainingType, parameter.ContainingType):
                    break;
                default: unknown.Add(Where(value)); break;
            }
        }
    }

    // What may be a call, or a store, of something of that name: the rest is never bound, which would take long.
    private static IEnumerable<string> Names(SyntaxNode node) => node switch
    {
        InvocationExpressionSyntax call => [Simple(call.Expression)],
        ObjectCreationExpressionSyntax made => [Simple(made.Type)],
        PrimaryConstructorBaseTypeSyntax made => [Simple(made.Type)],
        ImplicitObjectCreationExpressionSyntax or ConstructorInitializerSyntax => [AnyType],
        AssignmentExpressionSyntax store =>
            store.Left.DescendantTokens().Where(t => t.IsKind(SyntaxKind.IdentifierToken)).Select(t => t.ValueText).Distinct(),
        VariableDeclaratorSyntax { Initializer: not null } declared => [declared.Identifier.ValueText],
        _ => [],
    };

    private static string Simple(SyntaxNode name) => name switch
    {
        SimpleNameSyntax simple => simple.Identifier.ValueText,
        QualifiedNameSyntax qualified => Simple(qualified.Right),
        MemberAccessExpressionSyntax member => Simple(member.Name),
        MemberBindingExpressionSyntax member => Simple(member.Name),
        _ => "",
    };

    private IOperation? Bind(SyntaxNode node)
    {
        // A model remembers what it bound.
        var model = models.GetOrAdd(node.SyntaxTree, t => compilation.GetSemanticModel(t));
        // The declarator of a field is nothing that runs; what it is set to is.
        return model.GetOperation(node)
            ?? (node is VariableDeclaratorSyntax { Initializer: { } initializer } ? model.GetOperation(initializer) : null);
    }

    private IEnumerable<IOperation> Arguments(IParameterSymbol parameter)
    {
        var method = (IMethodSymbol)parameter.ContainingSymbol.OriginalDefinition;
        var needed = method.Parameters.Count(p => !p.IsOptional && !p.IsParams);
        var candidates = method.MethodKind == MethodKind.Constructor
            ? byName[method.ContainingType.Name]
                .Concat(byName[AnyType].Where(n => Count(n) >= needed && Count(n) <= method.Parameters.Length))
            : byName[method.Name];
        foreach (var operation in candidates.Select(Bind).OfType<IOperation>())
        {
            // What the compiler can't tell might be a call of it.
            if (operation is IInvalidOperation) yield return operation;
            else if (SymbolEqualityComparer.Default.Equals(Called(operation), method)) yield return Argument(operation, parameter);
        }
    }

    private static int Count(SyntaxNode call) => call.ChildNodes().OfType<ArgumentListSyntax>().FirstOrDefault()?.Arguments.Count ?? 0;

    private IEnumerable<IOperation> Stored(ISymbol symbol) => byName[symbol.Name].Select(Bind).OfType<IOperation>().SelectMany(Stores)
        .Where(s => SymbolEqualityComparer.Default.Equals(s.To, symbol)).Select(s => s.Value);

    private static string Where(IOperation operation) => $"{operation.Syntax.GetLocation().GetLineSpan().Path}: {operation.Syntax}";

    private static IMethodSymbol? Called(IOperation operation) => operation switch
    {
        IInvocationOperation call => (call.TargetMethod.ReducedFrom ?? call.TargetMethod).OriginalDefinition,
        IObjectCreationOperation made => made.Constructor?.OriginalDefinition,
        _ => null,
    };

    private static IOperation Argument(IOperation call, IParameterSymbol parameter) =>
        (call is IInvocationOperation i ? i.Arguments : ((IObjectCreationOperation)call).Arguments)
        .Single(a => a.Parameter!.Ordinal == parameter.Ordinal).Value;

    private static IEnumerable<(ISymbol To, IOperation Value)> Stores(IOperation operation) => operation switch
    {
        ISimpleAssignmentOperation one when Place(one.Target) is { } to => [(to, one.Value)],
        IFieldInitializerOperation field => field.InitializedFields.Select(f => ((ISymbol)f, field.Value)),
        IVariableDeclaratorOperation { Initializer.Value: { } value } local => [(local.Symbol, value)],
        IDeconstructionAssignmentOperation several => Tuples(several.Value).SelectMany(v => Elements(several.Target)
            .Zip(v, (to, value) => (To: Place(to), value))).Where(s => s.To is not null).Select(s => (s.To!, s.value)),
        _ => [],
    };

    private static ISymbol? Place(IOperation target) => target switch
    {
        IFieldReferenceOperation f => f.Field.OriginalDefinition,
        IPropertyReferenceOperation p => p.Property.OriginalDefinition,
        ILocalReferenceOperation l => l.Local,
        IDeclarationExpressionOperation d => Place(d.Expression),
        _ => null,
    };

    private static IEnumerable<IOperation> Elements(IOperation target) => target switch
    {
        IDeclarationExpressionOperation d => Elements(d.Expression),
        ITupleOperation t => t.Elements,
        _ => [],
    };

    private static IEnumerable<IEnumerable<IOperation>> Tuples(IOperation value) => value switch
    {
        IConversionOperation c => Tuples(c.Operand),
        ISwitchExpressionOperation many => many.Arms.SelectMany(a => Tuples(a.Value)),
        IConditionalOperation either => [.. Tuples(either.WhenTrue), .. Tuples(either.WhenFalse!)],
        ITupleOperation t => [t.Elements],
        _ => [],
    };
}
